/** Cautions about pressure on the bench. */
import { AIR_ENERGY_LIMIT_J, FIRST_AIR_LIMIT_Pa, TANK_AIR_LIMIT_Pa } from "@/lib/proof/mod.ts";
import { energy, pressure } from "./amounts.ts";
import type { TypedCaution } from "./caution.ts";

/** Cautions about pressure on the bench, by name. */
export const PRESSURE_CAUTIONS = {
  "pressure-test-person": {
    title: "You and what is under pressure",
    points: [
      {
        id: "shield",
        text: "Keep face and hands away from plugs under test, and a shield between.",
      },
      {
        id: "steps",
        text: "Raise the pressure in steps; no tightening under pressure: let it off first.",
      },
    ],
    source: "ASME PCC-2 article 501 and B31.3 para. 345.5, from memory; common practice",
  },
  "proof-liquid": {
    title: "Water, never petrol",
    points: [
      {
        id: "flash-point",
        text:
          "Proof test with water or with a liquid whose flash point is at least 49 °C (120 °F), " +
          "never with petrol.",
      },
      { id: "dry-after", text: "Dry and oil the rail afterwards." },
    ],
    source: "ASME B31.3 para. 345.4.1, by analogy",
  },
  "never-valved-off": {
    title: "Never shut liquid in",
    points: [
      {
        id: "open-line",
        text:
          "A rail full of liquid is never valved off and left: each degree that it warms adds " +
          "bars. The line to the gauge or to a relief valve stays open to it.",
      },
    ],
    source: "Thermal expansion of liquids; the rule is ours",
  },
  "air-limits": {
    title: "Little air",
    points: [
      {
        id: "first-limit",
        text:
          "Air stores thousands of times the energy of liquid at the same pressure: no more than " +
          "{first} at first.",
        values: { first: pressure(FIRST_AIR_LIMIT_Pa) },
      },
      {
        id: "energy-limit",
        text:
          "Air at working pressure only while it stores no more than {most}, behind a shield, and " +
          "never raised above working pressure; the relief, a tenth above at most, only stands by.",
        values: { most: energy(AIR_ENERGY_LIMIT_J) },
      },
    ],
    source: "ASME PCC-2 article 501 for the energy; the limits are ours",
  },
  tanks: {
    title: "Tanks are not rails",
    points: [
      {
        id: "tank-limit",
        text:
          "Tanks and surge tanks stay out of this test. On their own they get at most {most} of " +
          "air, or less where the maker says so.",
        values: { most: pressure(TANK_AIR_LIMIT_Pa) },
      },
      {
        id: "tank-used",
        text: "One that has held fuel gets none until someone qualified has made it gas-free.",
      },
    ],
    source: "Ours; the maker's lower figure rules",
  },
  "scope-DI": {
    title: "What this is not for",
    points: [
      {
        id: "port-only",
        text:
          "Do not build rails for direct injection or diesel common rail: they work at 50 to 2500 " +
          "bar.",
      },
    ],
    source: "Scope of the methods used here",
  },
} as const satisfies Record<string, TypedCaution>;
