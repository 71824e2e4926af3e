/** The BSFC assumed until the user states one. */
import { fuelEnergy } from "@/lib/fuel/mod.ts";
import type { Default, Earlier } from "./field.ts";
import { fuelSpecOf } from "./fuel_choice.ts";

/** Petrol figures towards the thirsty end of the planning bands [g/kWh]. */
const ON_PETROL = {
  "four-stroke": { natural: 310, boosted: 365 },
  "two-stroke": { natural: 500, boosted: 520 },
  rotary: { natural: 400, boosted: 450 },
} as const;

const BECAUSE = {
  "four-stroke": "Thirsty end of the planning band, so that parts are not undersized",
  "two-stroke": "Middle of 400 to 600 g/kWh, as part of the charge is short-circuited",
  rotary: "No published band was found; a rotary burns more than pistons: state yours",
} as const;

const SOURCE = {
  "four-stroke":
    "planning bands of the design (255 to 330, boosted 300 to 400 g/kWh on petrol), ours",
  "two-stroke": "common practice, no source",
  rotary: "common practice, no source",
} as const;

/**
 * Gives the BSFC to assume: a petrol figure by cycle and boost, brought to the
 * fuel at equal efficiency, that is by the ratio of heating values.
 */
export function bsfcDefault(earlier: Earlier): Default | undefined {
  const cycle = earlier.word("engine.cycle") as keyof typeof ON_PETROL | undefined;
  const aspiration = earlier.word("engine.aspiration") as "natural" | "boosted" | undefined;
  const name = earlier.word("fuel.name");
  if (!cycle || !aspiration || !name) return undefined;
  const fuel = fuelSpecOf({
    name,
    ethanolShare: earlier.number("fuel.ethanolShare"),
    petrolDensity: earlier.number("fuel.petrolDensity"),
    vapourPressure: undefined,
  });
  const scale = fuelEnergy({ ...fuel, base: "petrol", ethanolShare: 0 }) / fuelEnergy(fuel);
  const bsfc = Math.round(ON_PETROL[cycle][aspiration] * scale / 5) * 5;
  return { text: `${bsfc} g/kWh`, because: BECAUSE[cycle], source: SOURCE[cycle] };
}
