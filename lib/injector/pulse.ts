/** From fuel to pulse: how long an injector is open and how much of the time that takes. */
import { type Method, method, type MethodInput } from "@/lib/method/mod.ts";
import {
  COUNT,
  DEAD_TIME,
  DUTY,
  FUEL_DENSITY,
  FUEL_FLOW,
  FUEL_PER_INJECTION,
  INTERVAL,
  STATIC_FLOW,
} from "./limits.ts";

const LINEAR = "Linear injector model of SAE J1832: flow is static flow times pulse less dead time";
const TIME_RANGE = { unit: "s", min: 0, max: 1e6 } as const;
const OPEN_TIME: MethodInput = {
  ...TIME_RANGE,
  says: "Time for which the injector passes its static flow",
  symbol: "t_o",
};
const PULSE: MethodInput = {
  ...TIME_RANGE,
  says: "Whole pulse, dead time included",
  symbol: "t_p",
};

/**
 * Fuel [kg] that one injector gives at each injection. Source: continuity.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example 0.03 kg/s by four injectors, one injection every 17 ms
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * assertAlmostEquals(fuelPerInjection({ fuelFlow: 0.03, count: 4, interval: 0.017 }), 1.275e-4, 1e-9);
 * ```
 */
export const fuelPerInjection: Method<Record<"fuelFlow" | "count" | "interval", MethodInput>> =
  method({
    id: "fuel-per-injection",
    title: "Fuel of one injection",
    inputs: {
      fuelFlow: { ...FUEL_FLOW, says: "Fuel that the stage gives" },
      count: COUNT,
      interval: INTERVAL,
    },
    output: { ...FUEL_PER_INJECTION, name: "fuelPerInjection", max: 150 },
    formula: "fuelFlow * interval / count",
    source: "Continuity: each injector gives its share once an interval",
    compute: ({ fuelFlow, count, interval }) => fuelFlow * interval / count,
  });

/**
 * Time [s] that an injector has to be open for one injection.
 *
 * Source: linear injector model of SAE J1832.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * const open_s = openTime({ fuelPerInjection: 1e-4, density: 745, staticFlow: 1.2e-5 });
 *
 * assertAlmostEquals(open_s, 11.19e-3, 1e-5);
 * ```
 */
export const openTime: Method<
  Record<"fuelPerInjection" | "density" | "staticFlow", MethodInput>
> = method({
  id: "open-time",
  title: "Time an injector has to be open",
  inputs: { fuelPerInjection: FUEL_PER_INJECTION, density: FUEL_DENSITY, staticFlow: STATIC_FLOW },
  output: { ...OPEN_TIME, name: "openTime", max: 1e8 },
  formula: "fuelPerInjection / (density * staticFlow)",
  source: LINEAR,
  compute: ({ fuelPerInjection, density, staticFlow }) => fuelPerInjection / (density * staticFlow),
});

/**
 * Whole pulse [s]: open time plus dead time. Source: linear injector model of SAE J1832.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * assertAlmostEquals(pulseWidth({ openTime: 0.011, deadTime: 0.0013 }), 0.0123, 1e-12);
 * ```
 */
export const pulseWidth: Method<Record<"openTime" | "deadTime", MethodInput>> = method({
  id: "pulse-width",
  title: "Whole pulse of an injector",
  inputs: { openTime: OPEN_TIME, deadTime: DEAD_TIME },
  output: { ...PULSE, name: "pulse", max: 1e7 },
  formula: "openTime + deadTime",
  source: LINEAR,
  compute: ({ openTime, deadTime }) => openTime + deadTime,
});

/**
 * Duty [-]: the whole pulse, dead time included, over the time between injections.
 * Above 1 the injectors can't give the fuel.
 *
 * Source: definition of SAE J1832, on the whole pulse.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example 12.3 ms every 17.14 ms, as at 7000 rev/min
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * assertAlmostEquals(injectorDuty({ pulse: 0.0123, interval: 120 / 7000 }), 0.7175, 1e-6);
 * ```
 */
export const injectorDuty: Method<Record<"pulse" | "interval", MethodInput>> = method({
  id: "injector-duty",
  title: "Duty of an injector",
  inputs: { pulse: PULSE, interval: INTERVAL },
  output: {
    name: "duty",
    unit: "-",
    min: 0,
    max: 1e9,
    says: "Whole pulse over the time between injections; above 1 the fuel can't be given",
    symbol: "D",
  },
  formula: "pulse / interval",
  source: "Definition, on the whole pulse",
  compute: ({ pulse, interval }) => pulse / interval,
});

/**
 * Static flow [m^3/s] with which the whole pulse, dead time included, takes just the
 * wished share of the interval.
 *
 * Source: linear injector model of SAE J1832, solved for the flow.
 *
 * @throws {InputError} When a number lies outside its range, or dead time alone takes the share.
 *
 * @example
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * const flow_m3_s = neededStaticFlow({
 *   fuelPerInjection: 1.2e-4,
 *   density: 745,
 *   interval: 0.017,
 *   dutyAim: 0.8,
 *   deadTime: 1.2e-3,
 * });
 *
 * assertAlmostEquals(flow_m3_s * 60e6, 779.3, 0.1); // cm3/min
 * ```
 */
export const neededStaticFlow: Method<
  Record<"fuelPerInjection" | "density" | "interval" | "dutyAim" | "deadTime", MethodInput>
> = method({
  id: "needed-static-flow",
  title: "Static flow that an injector needs",
  inputs: {
    fuelPerInjection: FUEL_PER_INJECTION,
    density: FUEL_DENSITY,
    interval: INTERVAL,
    dutyAim: DUTY,
    deadTime: DEAD_TIME,
  },
  output: { ...STATIC_FLOW, name: "neededFlow", min: 0, max: 1e3 },
  formula: "fuelPerInjection / (density * (dutyAim * interval - deadTime))",
  source: LINEAR,
  compute: ({ fuelPerInjection, density, interval, dutyAim, deadTime }) =>
    fuelPerInjection / (density * (dutyAim * interval - deadTime)),
});

/**
 * Fuel [kg/s] that a stage gives when its whole pulses take a given share of the time.
 * Nothing when dead time alone takes it.
 *
 * Source: linear injector model of SAE J1832, solved for the fuel.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example Four injectors of 720 cm3/min at 90 %, 7000 rev/min
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * const fuel_kg_s = carriedFuel({
 *   count: 4,
 *   staticFlow: 1.2e-5,
 *   density: 745,
 *   duty: 0.9,
 *   deadTime: 1.2e-3,
 *   interval: 120 / 7000,
 * });
 *
 * assertAlmostEquals(fuel_kg_s, 0.02968, 1e-5);
 * ```
 */
export const carriedFuel: Method<
  Record<"count" | "staticFlow" | "density" | "duty" | "deadTime" | "interval", MethodInput>
> = method({
  id: "carried-fuel",
  title: "Fuel that a stage carries at a given duty",
  inputs: {
    count: COUNT,
    staticFlow: STATIC_FLOW,
    density: FUEL_DENSITY,
    duty: DUTY,
    deadTime: DEAD_TIME,
    interval: INTERVAL,
  },
  output: { ...FUEL_FLOW, name: "carriedFuel", max: 2000, says: "Fuel that the stage carries" },
  formula: "count * staticFlow * density * max(0, duty - deadTime / interval)",
  source: LINEAR,
  compute: ({ count, staticFlow, density, duty, deadTime, interval }) =>
    count * staticFlow * density * Math.max(0, duty - deadTime / interval),
});

/**
 * Open time over the smallest that an injector repeats [-]; below 1 it wanders.
 *
 * Source: end of the linear range in SAE J1832.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * assertAlmostEquals(overSmallestPulse({ openTime: 0.9e-3, smallest: 0.6e-3 }), 1.5, 1e-12);
 * ```
 */
export const overSmallestPulse: Method<Record<"openTime" | "smallest", MethodInput>> = method({
  id: "over-smallest-pulse",
  title: "Open time over the smallest repeatable one",
  inputs: {
    openTime: OPEN_TIME,
    smallest: {
      unit: "s",
      min: 1e-5,
      max: 0.05,
      says: "Smallest open time, dead time not counted, that the injector repeats",
      symbol: "t_{min}",
    },
  },
  output: {
    name: "overSmallest",
    unit: "-",
    min: 0,
    max: 1e12,
    says: "Open time over the smallest repeatable one",
    symbol: "k",
  },
  formula: "openTime / smallest",
  source: "SAE J1832: the linear range ends where flow per pulse no longer repeats",
  compute: ({ openTime, smallest }) => openTime / smallest,
});
