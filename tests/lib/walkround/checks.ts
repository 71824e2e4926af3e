/** What cautions, lists and readings are held against. */
import { assert, assertEquals } from "@std/assert";
import {
  AIR_MOLAR_MASS_kg_mol,
  ATMOSPHERE_Pa,
  type BurningFuel,
  fireData,
  flammableVolume,
  headspaceShare,
  judgeHeadspace,
  MOLAR_GAS_CONSTANT_J_mol_K,
  vapourDensityRatio,
  vapourVolume,
} from "@/lib/proof/mod.ts";
import {
  CAUTIONS,
  fillLine,
  type ListId,
  testLadder,
  walkRoundLists,
} from "@/lib/walkround/mod.ts";
import {
  type Answer,
  type Answers,
  type Check,
  fromReference,
  type ReferenceCase,
} from "../../helpers/checks.ts";
import { CONTEXTS } from "./contexts.ts";

/**
 * Where each thing that a caution must cover is said: the point's id, and words
 * that its text has to hold (in any order, any case).
 */
const COVERED: Readonly<Record<string, readonly (readonly [point: string, ...words: string[]])[]>> =
  {
    "ignition-sources": [
      ["no-ignition", "flame", "spark", "smoking", "lamp", "heater", "vapour can go"],
      ["vapour-travels", "heavier than air", "travels"],
    ],
    "covered-containers": [
      ["keep-covered", "approved containers", "covered", "not in use"],
      ["only-needed", "bench", "no more", "job needs"],
    ],
    "no-air-transfer": [
      ["no-air-push", "never move fuel", "air pressure", "can", "tank"],
      ["air-test-dry", "air test", "empty", "clean", "off the car", "without fuel"],
    ],
    bonding: [
      ["bond-first", "bond", "container", "receives", "before", "during"],
      ["bond-resistance", "resistance", "not over 1 megohm", "enough"],
    ],
    ventilation: [
      ["outdoors", "outdoors", "mechanical ventilation", "low level"],
      ["pits", "close pits", "drains"],
    ],
    zones: [
      [
        "classified",
        "pits",
        "450 mm",
        "floor",
        "classified",
        "Class I Division 2",
        "Zone 2",
        "fuel is handled",
      ],
      ["rated-tools", "lamps", "tools", "rated", "keep them out"],
    ],
    depressurise: [
      [
        "relieve",
        "relieve",
        "before opening",
        "fuse",
        "relay",
        "stall",
        "gauge valve",
        "wrap",
        "rag",
      ],
      ["returns", "pressure returns", "ignition is switched on"],
    ],
    battery: [
      ["negative-off", "disconnect the negative", "before fuel work", "refit it last"],
      ["chargers", "chargers away"],
    ],
    "hot-work": [
      [
        "gas-free",
        "welding",
        "brazing",
        "grinding",
        "on or near",
        "held fuel",
        "cleaned",
        "gas-free",
      ],
      ["fire-watch", "hot-work permit", "habit", "fire watch", "60 min", "after"],
    ],
    "extinguisher-ready": [
      ["class-b", "class B", "in reach", "between you and the exit", "seal", "gauge", "checked"],
      ["second-person", "second person", "knows the plan"],
    ],
    "methanol-flame": [
      ["invisible", "methanol", "alcohol", "nearly invisible", "daylight"],
      ["shimmer", "heat shimmer", "broom", "thermal camera"],
    ],
    "methanol-toxic": [
      ["toxic", "toxic", "swallowing", "skin", "vapour", "small amounts", "blind", "kill"],
      ["protect", "gloves", "methanol", "butyl", "siphoning by mouth", "ventilation"],
    ],
    "first-start": [
      ["order", "pump primed", "not running first", "idle", "hot"],
      ["cut-off", "second person", "cut-off switch"],
    ],
    "prime-limit": [
      ["timed", "timed", "stop by itself", "does not turn", "1 to 3 s"],
      ["verify", "verify it"],
    ],
    inertia: [
      ["fit", "keep or fit", "inertia (impact) cut-off", "pump's feed"],
      ["trip", "test it by tripping", "reset"],
    ],
    "hose-routing": [
      ["distance", "exhaust", "moving parts", "shield", "100 to 150 mm", "clip", "300 to 400 mm"],
      ["grommet", "grommet", "pass-through", "no hard contact"],
    ],
    "hose-life": [
      [
        "replace",
        "flexible",
        "periodically",
        "5 to 10 years",
        "maker",
        "hard",
        "cracked",
        "swollen",
        "weeping",
      ],
      ["re-torque", "re-torque", "clamps", "first heat cycle"],
    ],
    "hose-rating": [
      ["rated", "injection pressure", "alcohol content", "SAE J30 R9", "never", "carburettor hose"],
      ["clamps", "clamps of the type", "hose maker states"],
    ],
    "pressure-test-person": [
      ["shield", "face", "hands", "away", "plugs under test", "shield between"],
      ["steps", "in steps", "no tightening under pressure"],
    ],
    "proof-liquid": [
      ["flash-point", "water", "flash point", "49 °C", "never", "petrol"],
      ["dry-after", "dry", "oil", "afterwards"],
    ],
    "insurance-road": [
      [
        "inspection",
        "inspection",
        "registration",
        "insurance",
        "licensed workshop",
        "check it before road use",
      ],
    ],
    "scope-DI": [
      ["port-only", "do not build", "direct injection", "diesel common rail", "50 to 2500 bar"],
    ],
  };

const METHANOL = CONTEXTS["methanol, two rails"];
assert(METHANOL);

/** Cautions that stand beside a step of the ladder or a line of a list, on the plan that calls for most. */
const PRINTED: ReadonlySet<string> = new Set([
  ...testLadder(METHANOL).flatMap((rung) => [...rung.steps, ...rung.ifNot]),
  ...walkRoundLists(METHANOL).flatMap((list) => list.items),
].flatMap((each) => each.cautions));

/** A text that has to hold words. */
function assertHolds(text: string, words: readonly string[]): void {
  for (const word of words) {
    assert(text.toLowerCase().includes(word.toLowerCase()), `"${text}" does not say "${word}"`);
  }
}

/** The points of a caution, in one text each. */
function pointOf(topic: string, id: string): string {
  const point = CAUTIONS.find((each) => each.id === topic)?.points.find((each) => each.id === id);
  assert(point, `${topic} has no point ${id}`);
  return fillLine(point, ({ value }) => `${value}`);
}

const CAUTION: Answer = {
  methods: [],
  leaves: {
    must_cover: "each point is looked up by id and held against its words inside run",
    must_defer_to: "the line that defers is read inside run",
  },
  run: ({ topic }, c) => {
    const { must_cover } = c.expected as { must_cover: readonly string[] };
    const covered = COVERED[topic] ?? [];
    assertEquals(covered.length, must_cover.length, `${topic}: points that the case asks for`);
    for (const [id, ...words] of covered) assertHolds(pointOf(topic, id), words);
    const caution = CAUTIONS.find((each) => each.id === topic);
    assertHolds(caution?.defers ?? "", ["local codes", "licensed", "vehicle", "come first"]);
    assert((caution?.source.length ?? 0) > 5, `${topic} names no source`);
    assert(PRINTED.has(topic), `${topic} stands beside no step`);
    return {};
  },
};

const EXTINGUISHER: Readonly<Record<string, readonly string[]>> = {
  "J-ext-us-petrol": ["class B", "rated", "dry chemical", "CO2", "foam", "NFPA 10"],
  "J-ext-eu-petrol": ["class B", "EN 3", "EN 2"],
};

/** The case file says `gasoline` where we say petrol. */
function fuelOf(name: string): BurningFuel {
  const fuel = name === "gasoline" ? "petrol" : name;
  assert(fuel === "petrol" || fuel === "ethanol" || fuel === "methanol", name);
  return fuel;
}

/** The tolerances of this case are named by subject, so they are applied here. */
function assertFireData(answer: Record<string, number>, c: ReferenceCase): void {
  const { abs_flash_C, abs_vol, abs_autoignition_C } = c.tolerance as Record<string, number>;
  const within: Record<string, number | undefined> = {
    flash_C: abs_flash_C,
    LFL_volfrac: abs_vol,
    UFL_volfrac: abs_vol,
    autoignition_C: abs_autoignition_C,
  };
  const expected = c.expected as Record<string, number>;
  assertEquals(Object.keys(expected).toSorted(), Object.keys(within).toSorted());
  for (const [key, want] of Object.entries(expected)) {
    const off = Math.abs((answer[key] ?? NaN) - want);
    // The last bit of a difference of decimals is not the table's.
    assert(off <= (within[key] ?? 0) + 1e-9, `${key}: ${answer[key]}, published ${want}`);
  }
}

const BY_SUBJECT = "compared inside run, where the case's tolerance by subject is applied";

const FIRE_SAFETY: Answers = {
  "flash point, flammable limits, auto-ignition": {
    methods: [],
    leaves: {
      flash_C: BY_SUBJECT,
      LFL_volfrac: BY_SUBJECT,
      UFL_volfrac: BY_SUBJECT,
      autoignition_C: BY_SUBJECT,
    },
    run: ({ fuel }, c) => {
      const data = fireData(fuelOf(fuel));
      assertFireData({
        flash_C: data.flashPoint_K - 273.15,
        LFL_volfrac: data.lowerLimit,
        UFL_volfrac: data.upperLimit,
        autoignition_C: data.autoignition_K - 273.15,
      }, c);
      return {};
    },
  },
  "headspace at room temperature*": {
    methods: [headspaceShare],
    run: ({ fuel, vapour_pressure_kPa }) => {
      const share = headspaceShare({
        vapourPressure: vapour_pressure_kPa * 1e3,
        pressure: ATMOSPHERE_Pa,
      });
      const headspace = judgeHeadspace(share, fuelOf(fuel));
      return {
        vol_frac: share,
        inside_limits: headspace === "explosive",
        above_UFL: headspace === "too rich to burn",
      };
    },
  },
  "air volume that a spill can bring to the lower flammable limit": {
    methods: [vapourVolume, flammableVolume],
    run: (i) => {
      const vapour = vapourVolume({
        liquid: i.spill_mL * 1e-6,
        density: i.density_kg_m3,
        molarMass: i.molar_mass_g / 1e3,
        gasConstant: MOLAR_GAS_CONSTANT_J_mol_K,
        temperature: i.T_K,
        pressure: ATMOSPHERE_Pa,
      });
      return {
        vapour_L: vapour * 1e3,
        air_mix_m3: flammableVolume({ vapour, lowerLimit: i.LFL }),
      };
    },
  },
  "vapour density relative to air": {
    methods: [vapourDensityRatio],
    run: ({ molar_mass_g }) => {
      const rel = vapourDensityRatio({
        molarMass: molar_mass_g / 1e3,
        airMolarMass: AIR_MOLAR_MASS_kg_mol,
      });
      return { rel, heavier: rel > 1 };
    },
  },
  "classification / extinguisher": {
    methods: [],
    leaves: { extinguisher: "its words are looked for inside run" },
    run: ({ fuel }, c) => {
      const words = EXTINGUISHER[c.id];
      if (words !== undefined) {
        assertHolds(pointOf("extinguisher-ready", "class-b"), words);
        return {};
      }
      const { nfpaClass, oshaCategory } = fireData(fuelOf(fuel));
      return { nfpa30: nfpaClass, osha_category: oshaCategory };
    },
  },
  "caution statement": CAUTION,
};

/** Where what a walk round must hold is ticked: list, item, words. */
type Ticked = readonly [list: ListId, item: string, ...words: string[]];

/** An answer to a case that wants things looked at: each has its item, in the order of the case. */
function ticked(items: readonly Ticked[]): Answer {
  return {
    methods: [],
    leaves: { must: "each point is looked up by item and held against its words inside run" },
    run: (_, c) => {
      const { must } = c.expected as { must: readonly string[] };
      assertEquals(items.length, must.length, "points that the case asks for");
      for (const context of Object.values(CONTEXTS)) {
        const lists = walkRoundLists(context);
        for (const [list, id, ...words] of items) {
          const item = lists.find((l) => l.id === list)?.items.find((each) => each.id === id);
          assert(item, `${list} has no item ${id}`);
          const text = fillLine(item.text, ({ value }) => `${value}`);
          assertHolds(`${text}; with ${item.with}`, words);
        }
      }
      return {};
    },
  };
}

const OF_INSPECT = { later: "answered in tests/lib/inspect" } as const;

/** What the walk round must hold; the rest of the file is answered in tests/lib/inspect. */
const INSPECTION: Answers = {
  "general tolerance*": OF_INSPECT,
  "hole tolerance*": OF_INSPECT,
  "rule of thumb: head-gasket face flatness by straightedge": OF_INSPECT,
  "feeler gauge in mm": OF_INSPECT,
  "true position*": OF_INSPECT,
  "error of the last injector*": OF_INSPECT,
  "long-hole drift: wall left after wander": OF_INSPECT,
  "verdict of a feeler that does or does not enter under the straightedge": OF_INSPECT,
  "torque window of a calibrated wrench": OF_INSPECT,
  "particle size that matters": {
    methods: [],
    run: () => {
      const item = walkRoundLists(METHANOL)
        .find((list) => list.id === "bench")?.items.find((each) => each.id === "flush");
      const particle = item?.text.values?.particle;
      assertEquals(particle?.kind, "length");
      return { reject_particles_over_um: (particle?.value ?? NaN) * 1e6 };
    },
  },
  "burrs at intersecting holes": ticked([
    ["bench", "deburr", "every intersection", "deburred"],
    ["bench", "flush", "flushed both ways"],
    ["bench", "look-through", "looked through", "light", "borescope"],
  ]),
  "torque check record": ticked([
    ["bench", "torque", "calibration is in date"],
    ["bench", "torque", "two steps", "from the centre outwards"],
    ["bench", "marks", "paint mark", "every screw"],
    ["hot-soak", "torque", "torque checked", "after the first heat cycle"],
  ]),
};

/** All checks of the room. */
export const checks: Check[] = [
  ...fromReference("fire-safety.json", FIRE_SAFETY),
  ...fromReference("inspection.json", INSPECTION),
];
