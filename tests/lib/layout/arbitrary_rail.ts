/** Rails by chance: bars, galleries, tilted pockets, ports on three faces, screws. */
import fc from "fast-check";
import type {
  Bar,
  GalleryEnd,
  GallerySpec,
  PocketSpec,
  PortSpec,
  RailLayoutSpec,
  ScrewSpec,
  StationSpec,
  Stretch,
} from "@/lib/layout/mod.ts";

const MM = 1e-3;

const between = (low: number, high: number): fc.Arbitrary<number> =>
  fc.double({ min: low, max: high, noNaN: true });

const mm = (low: number, high: number): fc.Arbitrary<number> =>
  between(low, high).map((value) => value * MM);

const arbitraryBar: fc.Arbitrary<Bar> = fc.oneof(
  fc.record({
    shape: fc.constant("rectangular" as const),
    length_m: mm(160, 400),
    height_m: mm(24, 45),
    width_m: mm(24, 45),
  }),
  fc.tuple(mm(160, 400), mm(26, 45)).map(([length_m, d_m]) => ({
    shape: "round" as const,
    length_m,
    height_m: d_m,
    width_m: d_m,
  })),
);

const arbitraryEnd: fc.Arbitrary<GalleryEnd | undefined> = fc.constantFrom(
  undefined,
  {
    kind: "thread",
    thread: { name: "M14x1.5", major_m: 14 * MM, pitch_m: 1.5 * MM },
    drill_m: 12.5 * MM,
    threadDepth_m: 12 * MM,
    drillDepth_m: 15 * MM,
    seat: { mouth_m: 16 * MM, included_rad: Math.PI / 2 },
  },
  {
    kind: "ring",
    bore_m: 14 * MM,
    depth_m: 9 * MM,
    leadMouth_m: 15.2 * MM,
    leadAngle_rad: Math.PI / 12,
  },
  { kind: "cap", recess_m: 16 * MM, depth_m: 3 * MM },
);

function arbitraryGallery(bar: Bar): fc.Arbitrary<GallerySpec> {
  return fc.record({
    bore_m: mm(8, 12),
    across_m: mm(-2, 2),
    up: between(-2, 2),
    drilledFrom: fc.constantFrom("datum-end" as const, "far-end" as const, "both" as const),
    blind: fc.boolean(),
    datum: arbitraryEnd,
    far: arbitraryEnd,
  }).map(({ bore_m, across_m, up, drilledFrom, blind, datum, far }) => {
    const stops = blind && drilledFrom !== "both";
    const open = (end: GalleryEnd | undefined, side: string) =>
      stops && drilledFrom !== side ? undefined : end;
    const datumEnd = open(datum, "datum-end");
    const farEnd = open(far, "far-end");
    return {
      bore_m,
      across_m,
      up_m: bar.height_m / 2 + up * MM,
      drilledFrom,
      ...(stops ? { blindDepth_m: bar.length_m - 12 * MM } : {}),
      ends: {
        ...(datumEnd === undefined ? {} : { datum: datumEnd }),
        ...(farEnd === undefined ? {} : { far: farEnd }),
      },
    };
  });
}

const arbitraryPocket: fc.Arbitrary<PocketSpec> = fc.record({
  bore_m: mm(9, 14.5),
  depth_m: mm(5, 9),
  lead: mm(0.5, 1.5),
  leadAngle_rad: between(0.25, 0.4),
  pilot_m: mm(3, 7),
  bottom: fc.constantFrom("flat" as const, { included_rad: 2 * Math.PI / 3 }),
}).map(({ lead, ...pocket }) => ({ ...pocket, leadMouth_m: pocket.bore_m + lead }));

function arbitraryStations(bar: Bar): fc.Arbitrary<StationSpec[]> {
  return fc.tuple(
    arbitraryPocket,
    fc.array(fc.tuple(between(-4, 4), mm(-2, 2), between(-0.15, 0.15)), {
      minLength: 1,
      maxLength: 4,
    }),
  ).map(([pocket, places]) =>
    places.map(([off, across_m, tilt_rad], i) => ({
      at_m: bar.length_m * (i + 0.7) / (places.length + 0.4) + off * MM,
      across_m,
      tilt_rad,
      pocket,
    }))
  );
}

const straight = (cut: Stretch["cut"], from: number, to: number, d: number): Stretch => ({
  cut,
  from_m: from * MM,
  to_m: to * MM,
  fromDiameter_m: d * MM,
  toDiameter_m: d * MM,
});

/** A seat at the bottom of its tapping drill, and a parallel port with a spotface. */
const SHAPES: readonly Pick<PortSpec, "profile" | "thread" | "pilot_m">[] = [
  {
    profile: [
      straight("thread", 0, 5, 9),
      {
        cut: "seat",
        from_m: 5 * MM,
        to_m: 7.5 * MM,
        fromDiameter_m: 9 * MM,
        toDiameter_m: 4 * MM,
      },
    ],
    thread: { name: "M10x1", major_m: 10 * MM, pitch_m: MM, from_m: 0, to_m: 4 * MM },
    pilot_m: 4 * MM,
  },
  {
    profile: [straight("spotface", 0, 0.5, 17), straight("thread", 0.5, 6, 8.8)],
    thread: {
      name: "1/8 pipe",
      major_m: 9.728 * MM,
      pitch_m: 0.907 * MM,
      from_m: MM,
      to_m: 5 * MM,
    },
    pilot_m: 6 * MM,
  },
];

function arbitraryPorts(bar: Bar): fc.Arbitrary<PortSpec[]> {
  const port = fc.record({
    face: fc.constantFrom("opposite" as const, "front" as const, "back" as const),
    shape: fc.constantFrom(...SHAPES),
    share: between(0.08, 0.92),
    off: mm(-1.5, 1.5),
  });
  return fc.array(port, { maxLength: 3 }).map((ports) =>
    ports.map(({ face, shape, share, off }, i) => ({
      ...shape,
      id: `port-${i + 1}`,
      title: `Port ${i + 1}`,
      face,
      at_m: bar.length_m * share,
      across_m: face === "opposite" ? off : bar.height_m / 2 + off,
      intoGallery: true,
    }))
  );
}

function arbitraryScrews(bar: Bar): fc.Arbitrary<ScrewSpec[]> {
  const clear: ScrewSpec["hole"] = { clearance_m: 5.5 * MM };
  const tapped: ScrewSpec["hole"] = {
    thread: { name: "M6", major_m: 6 * MM, pitch_m: MM },
    drill_m: 5 * MM,
    threadDepth_m: 10 * MM,
    drillDepth_m: 13 * MM,
  };
  const screw = fc.record({
    face: fc.constantFrom("opposite" as const, "injectors" as const),
    hole: fc.constantFrom(clear, tapped),
    share: between(0.05, 0.95),
    side: fc.constantFrom(-1, 1),
    recessed: fc.boolean(),
  });
  return fc.array(screw, { maxLength: 3 }).map((screws) =>
    screws.map(({ face, hole, share, side, recessed }) => ({
      face,
      hole,
      at_m: bar.length_m * share,
      across_m: side * bar.width_m * 0.3,
      ...(recessed ? { counterbore: { diameter_m: 10 * MM, depth_m: 3 * MM } } : {}),
    }))
  );
}

/** Rails by chance; their holes may clash. */
export const arbitraryRail: fc.Arbitrary<RailLayoutSpec> = arbitraryBar.chain((bar) =>
  fc.record({
    bar: fc.constant(bar),
    gallery: arbitraryGallery(bar),
    stations: arbitraryStations(bar),
    ports: arbitraryPorts(bar),
    screws: arbitraryScrews(bar),
  })
);
