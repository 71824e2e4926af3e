/** Cooler and less volatile fuel, where the tank stands, and the figures of its need. */
import { chosen } from "../chosen.ts";
import type { CheckId, Lever } from "../lever.ts";
import { type Direction, type Step, stepped } from "../stepped.ts";
import type { System } from "@/lib/units/mod.ts";

const DEGREES: Readonly<Record<System, Step>> = {
  metric: { size: 1, unit: "°C" },
  inch: { size: 2, unit: "°F" },
};

/** The fuel need by one figure; either way, as either may be what is wrong. */
function figure(
  id: string,
  path: string,
  mends: readonly CheckId[],
  steps: Readonly<Record<System, Step>>,
): Lever[] {
  return (["down", "up"] as const).map((to: Direction) =>
    stepped({
      id: `${id}-${to}`,
      name: `a ${to === "up" ? "higher" : "lower"} ${id}, if the figure is what is wrong`,
      mends,
      path,
      to,
      steps,
    })
  );
}

/** Everything about fuel and its need. */
export const FUEL_LEVERS: readonly Lever[] = [
  stepped({
    id: "tank-cooler",
    name: "cooler fuel in the tank",
    mends: ["inlet-vapour"],
    path: "fuel.hottestTank",
    to: "down",
    steps: DEGREES,
  }),
  stepped({
    id: "soak-cooler",
    name: "a cooler rail after key-off",
    mends: ["soak-vapour"],
    path: "fuel.soakTemperature",
    to: "down",
    steps: DEGREES,
  }),
  stepped({
    id: "less-volatile",
    name: "a less volatile petrol",
    mends: ["inlet-vapour", "soak-vapour"],
    path: "fuel.vapourPressure",
    to: "down",
    steps: { metric: { size: 0.05, unit: "bar" }, inch: { size: 0.5, unit: "psi" } },
  }),
  stepped({
    id: "fuel-head",
    name: "more fuel above the pump's inlet",
    mends: ["inlet-vapour"],
    path: "supply.tankHead",
    to: "up",
    steps: { metric: { size: 50, unit: "mm" }, inch: { size: 2, unit: "in" } },
    most: 10, // half a metre: more is another vehicle
  }),
  chosen({
    id: "holds-pressure",
    name: "a check valve that holds the pressure",
    mends: ["soak-vapour"],
    path: "supply.holdsPressure",
    words: ({ values }) => values.supply.holdsPressure === "no" ? ["yes"] : [],
  }),
  ...figure("BSFC", "demand.bsfc", ["routes", "efficiency"], {
    metric: { size: 5, unit: "g/kWh" },
    inch: { size: 0.01, unit: "lb/(hp h)" },
  }),
  ...figure("filling", "demand.filling", ["routes"], {
    metric: { size: 1, unit: "%" },
    inch: { size: 1, unit: "%" },
  }),
];
