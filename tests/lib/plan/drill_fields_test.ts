/** What the plan says of bar, stations, pockets, ports, hold-down and shop, and what it assumes. */
import { assert, assertAlmostEquals, assertEquals, assertStringIncludes } from "@std/assert";
import {
  planJsonSchema,
  planReady,
  readPlan,
  type Resolved,
  resolvePlan,
  SECTIONS,
} from "@/lib/plan/mod.ts";
import { PLUG_THREADS, plugFor, PORT_THREADS, threadWidth } from "@/lib/plan/port_threads.ts";
import { MATERIALS } from "@/lib/strength/mod.ts";

await planReady();

const ENGINE = {
  cycle: "four-stroke",
  cylinders: 4,
  power: "200 hp",
  powerSpeed: "6500 rpm",
  aspiration: "natural",
};

function resolved(sections: Record<string, unknown>): Resolved {
  const reading = readPlan({ version: 1, engine: ENGINE, fuel: { name: "petrol" }, ...sections });
  assert(reading.ok, JSON.stringify(reading));
  return resolvePlan(reading.plan);
}

/** The sections that say how a rail is drilled. */
const NEW = ["stations", "pockets", "ports", "holdDown", "shop"] as const;

Deno.test("the sections stand in the order of the work", () => {
  assertEquals(Object.keys(SECTIONS).slice(5), [
    "rail",
    "stations",
    "pockets",
    "ports",
    "holdDown",
    "pump",
    "wiring",
    "lift",
    "supply",
    "operating",
    "sensor",
    "proof",
    "shop",
    "sheet",
  ]);
});

Deno.test("a plan that says nothing of drilling has nothing new open, and no rows", () => {
  const { values, missing } = resolved({ rail: { bore: "14 mm", height: "25 mm" } });
  assertEquals(
    missing.filter((path) => [...NEW, "rail"].some((name) => path.startsWith(`${name}.`))),
    [],
  );
  assertEquals(
    [values.stations.places, values.stations.readings, values.ports.holes, values.holdDown.screws],
    [[], [], [], []],
  );
});

Deno.test("a gallery stands in the middle of the bar until a plan says more", () => {
  const { rail } = resolved({ rail: { bore: "12 mm", height: "45 mm" } }).values;
  assertAlmostEquals(rail.galleryUp ?? 0, 0.0225, 1e-9);
  assertEquals([rail.galleryAcross, rail.drift, rail.ownWall], [0, undefined, undefined]);
});

Deno.test("without a bar nothing is made up of its gallery, and nothing more is open", () => {
  const { values, missing } = resolved({});
  assertEquals([values.rail.galleryUp, values.rail.plugThread], [undefined, undefined]);
  assert(!missing.includes("rail.galleryUp"));
  assert(missing.includes("rail.plugThread"));
});

/** Galleries with the plug whose tapping drill, from ISO 2306 or a drill chart, just passes them. */
const PLUGS: readonly [bore: string, thread: string | undefined, why: string][] = [
  ["10 mm", "M12x1.5-oring", "10.5 mm"],
  ["10.5 mm", "M12x1.5-oring", "10.5 mm, as wide as the gallery"],
  ["10.6 mm", "M14x1.5-oring", "12.5 mm"],
  ["1/2 in", "9/16-18-oring", "33/64 in"],
  ["33/64 in", "9/16-18-oring", "33/64 in, as wide as the gallery"],
  ["14 mm", "M16x1.5-oring", "14.5 mm"],
  ["16 mm", "M18x1.5-oring", "16.5 mm"],
  ["11/16 in", "3/4-16-oring", "11/16 in, as wide as the gallery"],
  ["20 mm", "M22x1.5-oring", "20.5 mm"],
  ["13/16 in", "7/8-14-oring", "13/16 in"],
  ["22 mm", undefined, "none is as wide"],
];

for (const [bore, thread, why] of PLUGS) {
  Deno.test(`a gallery of ${bore} is plugged by ${thread ?? "nothing known"}: ${why}`, () => {
    const { values, missing } = resolved({ rail: { bore, height: "40 mm" } });
    assertEquals(values.rail.plugThread, thread);
    assertEquals(missing.includes("rail.plugThread"), thread === undefined);
  });
}

Deno.test("no plug is assumed that has to be chosen narrower by a hair", () => {
  assertEquals(plugFor(0.0105 + 1e-12), "M12x1.5-oring");
  assertEquals(plugFor(0.0105 + 1e-6), "M14x1.5-oring");
});

Deno.test("every thread of plugs and ports has an outside diameter, those of ISO 228-1 and ASME B1.20.1 too", () => {
  const width_mm = (word: keyof typeof PORT_THREADS): number => threadWidth(word) * 1000;
  for (const word of Object.keys(PORT_THREADS) as (keyof typeof PORT_THREADS)[]) {
    assert(width_mm(word) > 9 && width_mm(word) < 23, word);
  }
  assertEquals(Object.keys(PLUG_THREADS).every((word) => word in PORT_THREADS), true);
  assertAlmostEquals(width_mm("M22x1.5-oring"), 22, 1e-9);
  assertAlmostEquals(width_mm("3/4-16-oring"), 19.05, 1e-9);
  assertAlmostEquals(width_mm("3/8-NPT"), 17.145, 1e-9);
  assertAlmostEquals(width_mm("G3/8-face"), 16.662, 1e-9);
});

Deno.test("welded ends have no plugs, and a blind gallery may say how deep it is", () => {
  const welded = resolved({ rail: { bore: "14 mm", ends: "welded", plugThread: "1/4-NPT" } });
  assertEquals(welded.values.rail.plugThread, undefined);
  assertEquals(welded.values.rail.plugEngagement, undefined);
  assertEquals(welded.notes["rail.plugThread"], "not used: caps are welded on");
  assertEquals(welded.missing.includes("rail.plugThread"), false);
  const blind = resolved({ rail: { ends: "blind", galleryDepth: "330 mm" } });
  assertEquals(blind.values.rail.galleryDepth, 0.33);
  const through = resolved({ rail: { galleryDepth: "330 mm" } });
  assertEquals(through.notes["rail.galleryDepth"], "not used: the gallery goes right through");
});

Deno.test("an own section is asked for its least wall, any other is not", () => {
  const own = { shape: "own", bore: "12 mm", height: "40 mm", width: "30 mm" };
  assert(resolved({ rail: own }).missing.includes("rail.ownWall"));
  assertEquals(resolved({ rail: { ...own, ownWall: "6 mm" } }).values.rail.ownWall, 0.006);
  const { values, notes } = resolved({ rail: { ...own, shape: "round", ownWall: "6 mm" } });
  assertEquals(values.rail.ownWall, undefined);
  assertEquals(notes["rail.ownWall"], "not used: the bar is rectangular or round");
});

Deno.test("the bar that is assumed is never longer than a bar may be", () => {
  const engine = { ...ENGINE, cylinders: 12 };
  assertAlmostEquals(resolved({ engine, rail: { pitch: "130 mm" } }).values.rail.length, 1.5);
});

Deno.test("what is common in a 14 mm pocket is assumed there", () => {
  const { pockets } = resolved({}).values;
  const { depth, pilot, ringInside, ringSection, groove, grooveWidth, land } = pockets;
  assertEquals(
    [depth, pilot, ringInside, ringSection, groove, grooveWidth, land]
      .map((size_m) => Number(((size_m ?? 0) * 1000).toFixed(6))),
    [12, 8, 7.52, 3.53, 8.4, 4.8, 13.9],
  );
  assertEquals([pockets.tolerance, pockets.elastomer], ["H9", "FKM"]);
  assertAlmostEquals(pockets.leadAngle, 20 * Math.PI / 180, 1e-12);
  assertEquals([pockets.leadMouth, pockets.ringsApart], [undefined, undefined]);
});

/** What is typed of the pocket, and what then has to be measured. */
const UNUSUAL: readonly [name: string, sections: Record<string, unknown>, open: string[]][] = [
  ["a common pocket a little wide", { rail: { pocketBore: "14.2 mm" } }, []],
  ["another pocket", { rail: { pocketBore: "11 mm" } }, [
    "land",
    "groove",
    "ringInside",
    "ringSection",
    "grooveWidth",
  ]],
  ["another injector", { pockets: { land: "12 mm" } }, [
    "groove",
    "ringInside",
    "ringSection",
    "grooveWidth",
  ]],
  ["another groove", { pockets: { groove: "9.6 mm" } }, [
    "ringInside",
    "ringSection",
    "grooveWidth",
  ]],
  ["another thickness", { pockets: { ringSection: "3 mm" } }, ["grooveWidth"]],
];

for (const [name, sections, open] of UNUSUAL) {
  Deno.test(`no common size is assumed beside ${name} that it may not go with`, () => {
    const { missing } = resolved(sections);
    assertEquals(
      missing.filter((path) => path.startsWith("pockets.")),
      open.map((field) => `pockets.${field}`),
    );
  });
}

/** Pocket and gallery, and the pilot that is assumed between them. */
const PILOTS: readonly [pocket: string, gallery: string | undefined, pilot_mm: number][] = [
  ["14 mm", undefined, 8],
  ["14 mm", "12 mm", 8],
  ["14 mm", "6.35 mm", 6.3],
  ["10 mm", "12 mm", 6],
  ["5 mm", "3 mm", 3],
];

for (const [pocketBore, bore, pilot_mm] of PILOTS) {
  Deno.test(`a pocket of ${pocketBore} over ${bore ?? "any gallery"} has a pilot of ${pilot_mm} mm`, () => {
    const { pockets } = resolved({ rail: { pocketBore, ...(bore && { bore }) } }).values;
    assertAlmostEquals(pockets.pilot * 1000, pilot_mm, 1e-9);
  });
}

Deno.test("screws are tightened by their size until a torque is given", () => {
  const torque = (holdDown: Record<string, unknown>): number =>
    resolved({ holdDown }).values.holdDown.torque;
  assertEquals(
    ["M5", "M6", "M8", "M10"].map((thread) => torque({ thread })),
    [5, 9, 20, 40],
  );
  assertAlmostEquals(torque({ thread: "M8", torque: "18 lb ft" }), 24.4048, 1e-4);
  const { thread, strengthClass, nutFactor, engagement, bossMaterial } =
    resolved({}).values.holdDown;
  assertEquals(
    [thread, strengthClass, nutFactor, engagement, bossMaterial],
    ["M6", "8.8", 0.2, 0.012, "6061-T6"],
  );
});

Deno.test("bosses are of what bars are of, and each of those has a strength", () => {
  const words = (field: { readonly options: object }): string[] => Object.keys(field.options);
  assertEquals(
    words(SECTIONS.holdDown.fields.bossMaterial).toSorted(),
    Object.keys(MATERIALS).toSorted(),
  );
});

Deno.test("a slow press has a slower lowest step", () => {
  const least = (mostSpeed: string): number =>
    resolved({ shop: { mostSpeed } }).values.shop.leastSpeed * 60;
  assertAlmostEquals(resolved({}).values.shop.mostSpeed * 60, 2600, 1e-9);
  assertAlmostEquals(least("2600 rpm"), 300, 1e-9);
  assertAlmostEquals(least("12000 rpm"), 300, 1e-9);
  assertAlmostEquals(least("800 rpm"), 100, 1e-9);
  assertAlmostEquals(least("101 rpm"), 12, 1e-9);
});

Deno.test("a port in an end has no place along the bar", () => {
  const hole = { use: "feed", thread: "M14x1.5-oring", face: "datum-end", at: "50 mm" };
  const { values, notes, missing } = resolved({ ports: { holes: [hole] } });
  assertEquals(values.ports.holes.map(({ at }) => at), [undefined]);
  assertStringIncludes(notes["ports.holes.0.at"] ?? "", "not used: a port in an end");
  assertEquals(missing.filter((path) => path.startsWith("ports.")), []);
});

Deno.test("angles at their bounds are taken in degrees", () => {
  const rows = (tilt: string) => [10, 20, 30, 40].map((at) => ({ at: `${at} cm`, tilt }));
  const rail = { length: "500 mm" };
  for (const tilt of ["-30°", "30 deg", "0°"]) {
    assertEquals(
      resolved({ rail, stations: { places: rows(tilt) } }).values.stations.places.length,
      4,
    );
  }
  for (const leadAngle of ["15°", "30°"]) resolved({ pockets: { leadAngle } });
});

Deno.test("the JSON Schema names the fields of each row", async () => {
  const schema = await planJsonSchema() as {
    properties: Record<string, {
      properties: Record<string, { items?: { properties: Record<string, unknown> } }>;
    }>;
  };
  const rows = (section: string, list: string): string[] =>
    Object.keys(schema.properties[section]?.properties[list]?.items?.properties ?? {});
  assertEquals(rows("stations", "places"), [
    "at",
    "across",
    "tilt",
    "seatHeight",
    "injectorLength",
  ]);
  assertEquals(rows("stations", "readings"), ["left", "right", "over", "pin"]);
  assertEquals(rows("ports", "holes"), ["use", "thread", "face", "at", "across", "depth"]);
  assertEquals(rows("holdDown", "screws"), ["at", "across"]);
});
