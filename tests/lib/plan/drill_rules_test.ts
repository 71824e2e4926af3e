/** What does not fit together in a rail that is to be drilled, each fault at its field. */
import { assert, assertEquals, assertStringIncludes } from "@std/assert";
import { planReady, readPlan } from "@/lib/plan/mod.ts";

await planReady();

type Sections = Record<string, Record<string, unknown>>;

const ENGINE = {
  cycle: "four-stroke",
  cylinders: 4,
  power: "200 hp",
  powerSpeed: "6500 rpm",
  aspiration: "natural",
};

/** The faults of a plan, by path. */
function faultsOf(sections: Sections): Map<string, string> {
  const reading = readPlan({ version: 1, engine: ENGINE, fuel: { name: "petrol" }, ...sections });
  return new Map(reading.ok ? [] : reading.faults.map(({ path, message }) => [path, message]));
}

/** A bar of 400 mm, 30 mm high and 25 mm wide, with a gallery of 12 mm. */
const BAR = { bore: "12 mm", height: "30 mm", width: "25 mm", length: "400 mm" };
const ROUND = { ...BAR, shape: "round" };

const placesAt = (...at_mm: readonly number[]) => at_mm.map((each) => ({ at: `${each} mm` }));
const FOUR = placesAt(50, 150, 250, 350);
const PORT = { use: "gauge", thread: "M10x1-oring", face: "opposite", at: "100 mm" };

type Refused = [name: string, sections: Sections, path: string, says: string];

const REFUSED: readonly Refused[] = [
  // The gallery: half of 12 mm from a face of the bar.
  [
    "a gallery that breaks out of the injector face",
    { rail: { ...BAR, galleryUp: "6 mm" } },
    "rail.galleryUp",
    "more than 6.00 mm (0.236 in) and less than 24.00 mm",
  ],
  [
    "a gallery that breaks out opposite",
    { rail: { ...BAR, galleryUp: "24 mm" } },
    "rail.galleryUp",
    "break out",
  ],
  [
    "a gallery that breaks out of the side",
    { rail: { ...BAR, galleryAcross: "-6.5 mm" } },
    "rail.galleryAcross",
    "less than 6.50 mm",
  ],
  // 5.4 mm up and 7.2 mm across are 9 mm off the middle of a round bar, where 15 - 6 = 9 mm are.
  [
    "a gallery that breaks out of a round bar, more across than up",
    { rail: { ...ROUND, galleryUp: "20.4 mm", galleryAcross: "7.2 mm" } },
    "rail.galleryAcross",
    "less than 7.20 mm",
  ],
  [
    "a gallery that breaks out of a round bar, more up than across",
    { rail: { ...ROUND, galleryUp: "22.2 mm", galleryAcross: "-5.4 mm" } },
    "rail.galleryUp",
    "more than 7.80 mm (0.307 in) and less than 22.20 mm",
  ],
  [
    "a wall that the outside sizes do not leave",
    { rail: { ...BAR, shape: "own", ownWall: "6.6 mm" } },
    "rail.ownWall",
    "no more than 6.50 mm",
  ],
  [
    "a wall that the outside sizes do not leave beside an offset gallery",
    { rail: { ...BAR, shape: "own", galleryAcross: "2 mm", ownWall: "5 mm" } },
    "rail.ownWall",
    "no more than 4.50 mm",
  ],
  [
    "a blind gallery from both ends",
    { rail: { ends: "blind", drilledFrom: "both" } },
    "rail.drilledFrom",
    "one end",
  ],
  [
    "a blind gallery as deep as the bar is long",
    { rail: { ...BAR, ends: "blind", galleryDepth: "400 mm" } },
    "rail.galleryDepth",
    "less than 400.00 mm",
  ],
  [
    "injectors that span more than the longest bar",
    { engine: { ...ENGINE, cylinders: 16 }, rail: { pitch: "100 mm" } },
    "rail.pitch",
    "longest bar",
  ],

  // The stations: half of a 14 mm pocket from an end or a side.
  [
    "a place without its distance",
    { stations: { places: [...FOUR.slice(0, 3), { tilt: "3°" }] } },
    "stations.places.3.at",
    "missing",
  ],
  [
    "a pocket over the datum end",
    { rail: BAR, stations: { places: placesAt(6.9, 150, 250, 350) } },
    "stations.places.0.at",
    "from 7.00 mm (0.276 in) to 393.00 mm",
  ],
  [
    "a pocket over the far end",
    { rail: BAR, stations: { places: placesAt(50, 150, 250, 394) } },
    "stations.places.3.at",
    "bar's end",
  ],
  [
    "a pocket over the side",
    { rail: BAR, stations: { places: [{ at: "50 mm", across: "5.6 mm" }, ...FOUR.slice(1)] } },
    "stations.places.0.across",
    "at most 5.50 mm",
  ],
  [
    "places out of order",
    { rail: BAR, stations: { places: placesAt(50, 250, 150, 350) } },
    "stations.places.2.at",
    "more than 250.00 mm",
  ],
  [
    "a place twice, in two units",
    { rail: BAR, stations: { places: [...placesAt(50, 127), { at: "5 in" }, { at: "350 mm" }] } },
    "stations.places.2.at",
    "more than 127.00 mm",
  ],
  [
    "too few places",
    { rail: BAR, stations: { places: FOUR.slice(1) } },
    "stations.places",
    "there are 3 rows, and a rail has 4 injectors",
  ],
  [
    "places of all rails in one",
    { rail: { ...BAR, count: 2 }, stations: { places: FOUR } },
    "stations.places",
    "a rail has 2 injectors",
  ],
  [
    "a reading with one edge",
    { stations: { readings: [{ left: "10 mm" }] } },
    "stations.readings.0.right",
    "missing",
  ],
  [
    "a reading with the other edge",
    { stations: { readings: [{ right: "10 mm" }] } },
    "stations.readings.0.left",
    "missing",
  ],
  [
    "a reading of an edge and a pin",
    { stations: { readings: [{ left: "10 mm", over: "24 mm", pin: "14 mm" }] } },
    "stations.readings.0.over",
    "both edges, or the pin",
  ],
  [
    "a pin without its diameter",
    { stations: { readings: [{ over: "24 mm" }] } },
    "stations.readings.0.pin",
    "missing",
  ],
  [
    "a pin without its far side",
    { stations: { readings: [{ pin: "14 mm" }] } },
    "stations.readings.0.over",
    "missing",
  ],
  [
    "a pin before the datum",
    { stations: { readings: [{ over: "5 mm", pin: "14 mm" }] } },
    "stations.readings.0.over",
    "far side",
  ],
  [
    "edges the wrong way round",
    { stations: { readings: [{ left: "24 mm", right: "10 mm" }] } },
    "stations.readings.0.right",
    "farther",
  ],
  [
    "bosses out of order",
    {
      stations: {
        readings: [
          { over: "24 mm", pin: "14 mm" },
          { left: "210 mm", right: "224 mm" },
          { left: "110 mm", right: "124 mm" },
          { over: "324 mm", pin: "14 mm" },
        ],
      },
    },
    "stations.readings.2.left",
    "centre at 217.00 mm",
  ],
  [
    "a pin out of order",
    {
      stations: {
        readings: [{ left: "110 mm", right: "124 mm" }, { over: "24 mm", pin: "14 mm" }],
      },
    },
    "stations.readings.1.over",
    "in order",
  ],
  [
    "too many readings",
    {
      stations: {
        readings: [10, 20, 30, 40, 50].map((mm) => ({ over: `${mm + 7} mm`, pin: "14 mm" })),
      },
    },
    "stations.readings",
    "there are 5 rows",
  ],

  // The pockets, 14 mm wide and 12 mm deep.
  [
    "a pilot as wide as the pocket",
    { pockets: { pilot: "14 mm" } },
    "pockets.pilot",
    "less than its bore, 14.00 mm",
  ],
  [
    "a mouth that does not open",
    { pockets: { leadMouth: "14 mm" } },
    "pockets.leadMouth",
    "more than the pocket's bore",
  ],
  // 14 + 2 x 12 x tan 20 degrees = 22.74
  [
    "a lead-in as deep as its pocket",
    { pockets: { leadMouth: "22.8 mm" } },
    "pockets.leadMouth",
    "less than 22.74 mm",
  ],
  [
    "an injector that does not enter",
    { pockets: { land: "14 mm" } },
    "pockets.land",
    "does not enter",
  ],
  [
    "a groove that is none",
    { pockets: { groove: "13.9 mm" } },
    "pockets.groove",
    "less than 13.90 mm",
  ],
  [
    "a groove as wide as a pocket whose injector is not known",
    { rail: { pocketBore: "11 mm" }, pockets: { groove: "11 mm" } },
    "pockets.groove",
    "less than 11.00 mm",
  ],
  [
    "a ring far too small for its groove",
    { pockets: { ringInside: "5.7 mm" } },
    "pockets.ringInside",
    "Enter 5.88 mm (0.231 in) to 8.8",
  ],
  [
    "the outside of a ring for its inside",
    { pockets: { ringInside: "14.58 mm" } },
    "pockets.ringInside",
    "no ring for this groove",
  ],
  // (13.9 - 8.4) / 2 = 2.75
  [
    "a ring below the rim of its groove",
    { pockets: { ringSection: "2.6 mm" } },
    "pockets.ringSection",
    "more than 2.75 mm",
  ],
  [
    "a groove narrower than its ring",
    { pockets: { grooveWidth: "3.5 mm" } },
    "pockets.grooveWidth",
    "at least its thickness, 3.53 mm",
  ],

  // The ports: half of M10 from an end or a side.
  ...(["use", "thread", "face"] as const).map((
    name,
  ): Refused => [
    `a port without its ${name}`,
    { rail: BAR, ports: { holes: [{ ...PORT, [name]: undefined }] } },
    `ports.holes.0.${name}`,
    "clear the row",
  ]),
  [
    "a port without its distance",
    { ports: { holes: [{ ...PORT, at: undefined }] } },
    "ports.holes.0.at",
    "missing",
  ],
  [
    "a port over the end",
    { rail: BAR, ports: { holes: [PORT, { ...PORT, at: "396 mm" }] } },
    "ports.holes.1.at",
    "from 5.00 mm (0.197 in) to 395.00 mm",
  ],
  [
    "a port over the side of the top",
    { rail: BAR, ports: { holes: [{ ...PORT, across: "7.6 mm" }] } },
    "ports.holes.0.across",
    "at most 7.50 mm",
  ],
  [
    "a port over the edge of the front",
    { rail: BAR, ports: { holes: [{ ...PORT, face: "front", across: "-10.1 mm" }] } },
    "ports.holes.0.across",
    "at most 10.00 mm",
  ],
  [
    "a port over the side of an end",
    { rail: BAR, ports: { holes: [{ ...PORT, face: "far-end", across: "7.6 mm" }] } },
    "ports.holes.0.across",
    "at most 7.50 mm",
  ],
  [
    "a port twice in one place",
    { rail: BAR, ports: { holes: [PORT, { ...PORT, use: "temperature", across: "0 mm" }] } },
    "ports.holes.1.at",
    "same place",
  ],
  [
    "two ports in one end",
    {
      rail: BAR,
      ports: { holes: [{ ...PORT, face: "far-end" }, { ...PORT, use: "return", face: "far-end" }] },
    },
    "ports.holes.1.face",
    "room for one port",
  ],
  [
    "a port in the closed end of a blind gallery",
    { rail: { ...BAR, ends: "blind" }, ports: { holes: [{ ...PORT, face: "far-end" }] } },
    "ports.holes.0.face",
    "blind",
  ],

  // The screws: half of the 6.6 mm that lets an M6 pass, and of the 9 mm for an M8.
  [
    "a screw without its distance",
    { holdDown: { screws: [{ across: "1 mm" }] } },
    "holdDown.screws.0.at",
    "missing",
  ],
  [
    "a screw over the end",
    { rail: BAR, holdDown: { screws: placesAt(3.2) } },
    "holdDown.screws.0.at",
    "from 3.30 mm",
  ],
  [
    "a larger screw over the side",
    { rail: BAR, holdDown: { thread: "M8", screws: [{ at: "100 mm", across: "-8.1 mm" }] } },
    "holdDown.screws.0.across",
    "at most 8.00 mm",
  ],
  [
    "a screw twice",
    { rail: BAR, holdDown: { screws: [{ at: "1 in" }, { at: "25.4 mm", across: "0 mm" }] } },
    "holdDown.screws.1.at",
    "same place",
  ],

  [
    "a press that turns no slower than its highest speed",
    { shop: { leastSpeed: "2600 rpm" } },
    "shop.leastSpeed",
    "below the highest, 2600 rpm",
  ],
];

for (const [name, sections, path, says] of REFUSED) {
  Deno.test(`readPlan() refuses ${name}`, () => {
    const faults = faultsOf(sections);
    assert(faults.has(path), `no fault there, but ${JSON.stringify([...faults])}`);
    assertStringIncludes(faults.get(path) ?? "", says);
  });
}

/** What lies just inside of what is refused above. */
const TAKEN: readonly [name: string, sections: Sections][] = [
  ["a gallery just inside the injector face", { rail: { ...BAR, galleryUp: "6.01 mm" } }],
  ["a gallery just inside the side", { rail: { ...BAR, galleryAcross: "-6.49 mm" } }],
  [
    "a gallery just inside a round bar",
    { rail: { ...ROUND, galleryUp: "20.39 mm", galleryAcross: "7.19 mm" } },
  ],
  ["the very wall that is left", { rail: { ...BAR, shape: "own", ownWall: "6.5 mm" } }],
  ["a blind gallery from one end", { rail: { ...BAR, ends: "blind", galleryDepth: "390 mm" } }],
  ["a place for each injector", { rail: BAR, stations: { places: FOUR } }],
  [
    "pockets that touch both ends and the side",
    {
      rail: BAR,
      stations: {
        places: [{ at: "7 mm" }, ...FOUR.slice(1, 3), { at: "393 mm", across: "5.5 mm" }],
      },
    },
  ],
  [
    "a place for each injector of both stages",
    {
      rail: { ...BAR, count: 2 },
      injectors: { stages: [{ flow: "300 cc/min" }, { flow: "500 cc/min" }] },
      stations: { places: FOUR },
    },
  ],
  [
    "places on a bar that is shorter than the pitch would need",
    { rail: { ...BAR, length: "200 mm" }, stations: { places: placesAt(20, 70, 120, 170) } },
  ],
  [
    "readings by edges and by pins",
    {
      stations: {
        readings: [
          { left: "10 mm", right: "24 mm" },
          { over: "124 mm", pin: "14 mm" },
          { left: "210 mm", right: "224 mm" },
          { over: "324 mm", pin: "14 mm" },
        ],
      },
    },
  ],
  ["a lead-in that leaves some bore", { pockets: { leadMouth: "22.7 mm" } }],
  [
    "another injector all measured",
    {
      rail: { pocketBore: "11 mm" },
      pockets: {
        land: "10.7 mm",
        groove: "7.4 mm",
        ringInside: "7.1 mm",
        ringSection: "2.2 mm",
        grooveWidth: "3 mm",
      },
    },
  ],
  [
    "ports in each face, two in one",
    {
      rail: BAR,
      ports: {
        holes: [
          ...["opposite", "front", "back", "injectors", "datum-end", "far-end"].map((face) => ({
            ...PORT,
            face,
          })),
          { ...PORT, at: "130 mm" },
        ],
      },
    },
  ],
  [
    "a port in the open end of a blind gallery",
    { rail: { ...BAR, ends: "blind" }, ports: { holes: [{ ...PORT, face: "datum-end" }] } },
  ],
  [
    "screws beside one another",
    {
      rail: BAR,
      holdDown: {
        screws: [{ at: "100 mm", across: "9.2 mm" }, { at: "100 mm", across: "-9.2 mm" }],
      },
    },
  ],
];

for (const [name, sections] of TAKEN) {
  Deno.test(`readPlan() takes ${name}`, () => assertEquals([...faultsOf(sections)], []));
}

Deno.test("nothing is said of a gallery in a bar that is too small for it, but its bore", () => {
  const rail = { bore: "25 mm", height: "25 mm", galleryUp: "3 mm", shape: "own", ownWall: "2 mm" };
  assertEquals([...faultsOf({ rail }).keys()], ["rail.bore"]);
});

Deno.test("faults of rows are named in one go, and stand with those of fields", () => {
  const faults = faultsOf({
    rail: BAR,
    stations: { places: [{ at: "2 mm" }, { tilt: "1°" }, { at: "399 mm" }, { at: "350 mm" }] },
    pockets: { pilot: "lots" },
  });
  assertEquals([...faults.keys()], [
    "pockets.pilot",
    "stations.places.0.at",
    "stations.places.1.at",
    "stations.places.2.at",
    "stations.places.3.at",
  ]);
  assertStringIncludes(faults.get("stations.places.3.at") ?? "", "more than 399.00 mm");
});
