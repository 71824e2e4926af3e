/** A rail laid out, its table and its tools. */
import { assert, assertAlmostEquals, assertEquals, assertThrows } from "@std/assert";
import {
  clashes,
  type Hole,
  holeTable,
  layRail,
  mouthDip,
  openingOf,
  type PortSpec,
  type RailLayoutSpec,
  tools,
} from "@/lib/layout/mod.ts";
import { barOf, cut, MM, RAIL, stationAt } from "./holes.ts";

const M10 = { name: "M10x1", major_m: 10 * MM, pitch_m: MM };
const M6 = { name: "M6", major_m: 6 * MM, pitch_m: MM };

const SENSOR: PortSpec = {
  id: "sensor",
  title: "Pressure sensor",
  face: "opposite",
  at_m: 100 * MM,
  across_m: 0,
  profile: [cut("thread", 0, 3, 9), cut("seat", 3, 5.5, 9, 4)],
  thread: { ...M10, from_m: 0, to_m: 2 * MM },
  intoGallery: true,
  pilot_m: 4 * MM,
};

const FULL: RailLayoutSpec = {
  ...RAIL,
  gallery: {
    ...RAIL.gallery,
    drilledFrom: "both",
    ends: {
      datum: {
        kind: "thread",
        thread: { name: "M14x1.5", major_m: 14 * MM, pitch_m: 1.5 * MM },
        drill_m: 12.5 * MM,
        threadDepth_m: 12 * MM,
        drillDepth_m: 15 * MM,
      },
      far: {
        kind: "ring",
        bore_m: 14 * MM,
        depth_m: 9 * MM,
        leadMouth_m: 15 * MM,
        leadAngle_rad: Math.PI / 12,
      },
    },
  },
  ports: [SENSOR],
  screws: [
    {
      face: "opposite",
      at_m: 30 * MM,
      across_m: 10 * MM,
      hole: { clearance_m: 6.6 * MM },
      counterbore: { diameter_m: 9 * MM, depth_m: 4 * MM },
    },
    {
      face: "injectors",
      at_m: 170 * MM,
      across_m: -10 * MM,
      hole: { thread: M6, drill_m: 5 * MM, threadDepth_m: 10 * MM, drillDepth_m: 13 * MM },
    },
  ],
};

const holeOf = (spec: RailLayoutSpec, id: string): Hole =>
  layRail(spec).holes.find((hole) => hole.id === id) as Hole;

Deno.test("the table lists gallery, plugs, pockets, ports, screws with their places", () => {
  const rows = holeTable(layRail(FULL));
  const mm = (value: number) => Math.round(value / MM * 1e6) / 1e6;
  assertEquals(
    rows.map((r) => [r.id, r.face, mm(r.x_m), mm(r.y_m), mm(r.z_m), mm(r.depth_m), r.through]),
    [
      ["gallery", "datum-end", 0, 0, 19, 200, true],
      ["plug-datum", "datum-end", 0, 0, 19, 15, false],
      ["plug-far", "far-end", 200, 0, 19, 9, false],
      ["pocket-1", "injectors", 60, 0, 0, 19, false],
      ["pocket-2", "injectors", 140, 0, 0, 19, false],
      ["sensor", "opposite", 100, 0, 30, 11, false],
      ["screw-1", "opposite", 30, 10, 30, 30, true],
      ["screw-2", "injectors", 170, -10, 0, 13, false],
    ],
  );
  assertEquals(rows.flatMap(({ thread }) => thread?.name ?? []), ["M14x1.5", "M10x1", "M6"]);
});

Deno.test("the tools are distinct, each with the holes it serves", () => {
  const list = tools(layRail(FULL)).map(({ kind, diameter_m, holes }) =>
    `${kind} ${Math.round(diameter_m / MM * 10) / 10}: ${holes.join(", ")}`
  );
  assertEquals(list, [
    "drill 10: gallery",
    "drill 12.5: plug-datum",
    "tap 14: plug-datum",
    "countersink 15: plug-far, pocket-1, pocket-2",
    "bore 14: plug-far, pocket-1, pocket-2",
    "drill 6: pocket-1, pocket-2",
    "spotting drill 9: sensor",
    "drill 4: sensor",
    "tap 10: sensor",
    "counterbore 9: screw-1",
    "drill 6.6: screw-1",
    "drill 5: screw-2",
    "tap 6: screw-2",
  ]);
  const spot = tools(layRail(FULL)).find(({ kind }) => kind === "spotting drill");
  assertAlmostEquals(spot?.included_rad ?? NaN, Math.PI / 2, 1e-12);
});

Deno.test("pilots from opposite faces into one gallery don't clash, screws through it do", () => {
  const opposite = { ...SENSOR, at_m: 60 * MM };
  const limits = { ligament_m: 2 * MM, shareOfSmaller: 0.5 };
  const above = layRail({ ...FULL, ports: [opposite] });
  assertEquals(clashes(above, limits).filter(({ b }) => b === "sensor"), []);
  const through = {
    face: "opposite" as const,
    at_m: 90 * MM,
    across_m: 0,
    hole: { clearance_m: 5 * MM },
  };
  const [clash] = clashes(layRail({ ...RAIL, screws: [through] }), limits);
  assertEquals([clash?.a, clash?.b], ["gallery", "screw-1"]);
  assert((clash?.distance_m ?? 0) < 0);
});

Deno.test("a leaning pocket's pilot ends at the gallery's axis", () => {
  const pocket = holeOf({ ...RAIL, stations: [stationAt(60, 0.2)] }, "pocket-1");
  const pilot = pocket.profile.find((s) => s.cut === "pilot");
  assertAlmostEquals(pilot?.to_m ?? NaN, 19 * MM / Math.cos(0.2), 1e-12);
  assertAlmostEquals(holeTable({ bar: RAIL.bar, holes: [pocket] })[0]?.lean_rad ?? NaN, 0.2, 1e-12);
});

Deno.test("a form tool leaves its cone between bore and pilot", () => {
  const station = stationAt(60);
  const pocket = { ...station.pocket, bottom: { included_rad: Math.PI / 2 } };
  const hole = holeOf({ ...RAIL, stations: [{ ...station, pocket }] }, "pocket-1");
  assertEquals(hole.profile.map((s) => s.cut), ["lead-in", "bore", "bore", "pilot", "tip"]);
  assertAlmostEquals(hole.profile[2]?.to_m ?? NaN, 12 * MM, 1e-12);
});

Deno.test("an end port drills on to where a gallery from the other end begins", () => {
  const gallery = { ...RAIL.gallery, drilledFrom: "far-end" as const, blindDepth_m: 180 * MM };
  const port: PortSpec = {
    ...SENSOR,
    face: "datum-end",
    at_m: 0,
    across_m: 19 * MM,
    profile: [cut("thread", 0, 10, 9)],
  };
  const hole = holeOf({ ...RAIL, gallery, ports: [port] }, "sensor");
  assertAlmostEquals(hole.profile[1]?.to_m ?? NaN, 20 * MM, 1e-12);
});

Deno.test("on a round bar entries lie on the surface", () => {
  const bar = { shape: "round", length_m: 0.2, height_m: 30 * MM, width_m: 30 * MM } as const;
  const ports = [
    { ...SENSOR, across_m: 9 * MM },
    { ...SENSOR, id: "front", face: "front" as const, across_m: 15 * MM },
    { ...SENSOR, id: "back", face: "back" as const, across_m: 24 * MM },
  ];
  const { holes } = layRail({ ...RAIL, bar, ports });
  const entries = holes.slice(-3).map(({ entry }) =>
    entry.map((at) => Math.round(at / MM * 1e6) / 1e6)
  );
  assertEquals(entries, [[100, 9, 27], [100, -15, 15], [100, 12, 24]]);
  // Mouth of 9 mm, 9 mm off the middle: its outer edge is 13.5 mm off.
  const dip_m = mouthDip(holes[3] as Hole, bar);
  assertAlmostEquals(dip_m ?? NaN, (12 - Math.sqrt(15 ** 2 - 13.5 ** 2)) * MM, 1e-9);
});

Deno.test("a pocket too deep for a pilot is laid out, and shown to cut the gallery", () => {
  const station = stationAt(60);
  const deep = { ...station, pocket: { ...station.pocket, depth_m: 21 * MM } };
  const { holes } = layRail({ ...RAIL, stations: [deep] });
  const [gallery, pocket] = holes as [Hole, Hole];
  assertEquals(pocket.profile.map((s) => s.cut), ["lead-in", "bore"]);
  assert((openingOf(pocket, gallery)?.above_m ?? 1) < 0);
});

const WRONG: readonly [what: string, spec: RailLayoutSpec, says: string][] = [
  ["a bar without height", { ...RAIL, bar: barOf(200, 0) }, "height_m must be > 0"],
  [
    "a round bar of two diameters",
    { ...RAIL, bar: { ...RAIL.bar, shape: "round", width_m: 0.02 } },
    "diameter of a round bar",
  ],
  ["a pocket past the end", { ...RAIL, stations: [stationAt(201)] }, "at_m must lie on the bar"],
  ["a pocket nowhere", { ...RAIL, stations: [stationAt(NaN)] }, "at_m must lie on the bar"],
  [
    "a screw beside the bar",
    {
      ...FULL,
      screws: [{ face: "opposite", at_m: 0.1, across_m: 0.02, hole: { clearance_m: 0.006 } }],
    },
    "across_m must lie on the bar",
  ],
  ["two ports of one name", { ...FULL, ports: [SENSOR, SENSOR] }, "id must be unique"],
  [
    "a gap between stretches",
    { ...FULL, ports: [{ ...SENSOR, profile: [cut("thread", 0, 3, 9), cut("seat", 4, 5, 9, 4)] }] },
    "must go on from",
  ],
];

for (const [what, spec, says] of WRONG) {
  Deno.test(`${what} can't be laid out`, () => {
    assertThrows(() => layRail(spec), RangeError, says);
  });
}
