/** Rows of tables and constants that no reference case holds, against what standards print. */
import { assert, assertAlmostEquals, assertEquals } from "@std/assert";
import { Working } from "@/lib/method/mod.ts";
import {
  CLEARANCE_HOLES,
  type ClearanceScrew,
  DEEP_FROM_DIAMETERS,
  feedBand,
  G_THREADS,
  NPT_THREADS,
  nptFace,
  nptSmallEnd,
  nptUsefulLength,
  PECK_FROM_DIAMETERS,
  PIPE_FAMILIES,
  type PortId,
  PORTS,
  type SensorPort,
  sensorPort,
  type SensorPortSpec,
  stressAreaUnified,
  taperUsefulLength,
  threadOf,
} from "@/lib/thread/mod.ts";
import type { Check } from "../../helpers/checks.ts";
import { DEGREE, find, INCH, MM, nptNumbers } from "./shorthand.ts";

/** ASME B1.1 appendix B, stress areas [in^2]. */
const UNIFIED_AREAS = [
  ["1/4-20", 0.0318],
  ["1/4-28", 0.0364],
  ["5/16-18", 0.0524],
  ["3/8-24", 0.0878],
  ["7/16-20", 0.1187],
  ["1/2-20", 0.1599],
] as const;

/** ISO 7-1 table 1: gauge length, fitting allowance, useful length [mm]. */
const R_LENGTHS = [
  ["1/8", 4.0, 2.5, 6.5],
  ["1/4", 6.0, 3.7, 9.7],
  ["3/8", 6.4, 3.7, 10.1],
  ["1/2", 8.2, 5.0, 13.2],
  ["3/4", 9.5, 5.0, 14.5],
] as const;

/** ASME B1.20.1 table 2: threads to the inch, E0, E1, L2; drills, straight and reamed [in]. */
const NPT_ROWS = [
  ["1/16", 27, 0.27118, 0.28118, 0.2611, [0.242, 0.246], 0.2344],
  ["3/8", 18, 0.61201, 0.62701, 0.4078, [0.5781], 0.5625],
] as const;

/** ISO 273: fine, medium, coarse [mm]. */
const CLEARANCE: readonly (readonly [ClearanceScrew, number, number, number])[] = [
  ["M3", 3.2, 3.4, 3.6],
  ["M10", 10.5, 11, 12],
  ["M12", 13, 13.5, 14.5],
];

/** Feeds of high-speed steel drills: up to a diameter, from and to [in]. */
const FEEDS = [
  [1 / 8, 0.001, 0.003],
  [1 / 4, 0.002, 0.006],
  [1 / 2, 0.004, 0.010],
  [1, 0.007, 0.015],
] as const;

/** Port, width of the flat and depth of the mouth [mm]; what a remark must say. */
const MOUTHS: readonly (readonly [PortId, number, number, string])[] = [
  ["7/16-20-oring", 21, 2.4, "12 degrees from the axis, 12.4 mm wide, 2.4 mm deep"],
  ["M10x1-oring", 20, 1.6, "12 degrees from the axis, 11.1 mm wide, 1.6 mm deep"],
  ["M12x1.5-oring", 23, 2.4, "15 degrees from the axis, 13.8 mm wide, 2.4 mm deep"],
  ["M14x1.5-oring", 25, 2.4, "15 degrees from the axis, 15.8 mm wide, 2.4 mm deep"],
];

/** As the standards print lengths. */
const inMm = (length_m: number): string => `${Number((length_m / MM).toFixed(3))} mm`;

const lay = (change: Partial<SensorPortSpec> = {}): SensorPort =>
  sensorPort(new Working(), {
    port: "M10x1-cone",
    torque_Nm: 18,
    shearStrength_Pa: 156e6,
    faceToAxis_m: 0.022,
    galleryBore_m: 0.0127,
    faceWidth_m: 0.03,
    ...change,
  });

export const printed: Check[] = [
  {
    name: "stress areas of unified screws to the last printed place",
    methods: [stressAreaUnified],
    source: "ASME B1.1 appendix B",
    provenance: "from-memory",
    run: () => {
      for (const [thread, area] of UNIFIED_AREAS) {
        const { nominal_m: nominal, pitch_m: pitch } = find(thread);
        assertAlmostEquals(stressAreaUnified({ nominal, pitch }) / INCH ** 2, area, 6e-5, thread);
      }
    },
  },
  {
    name: "R threads: gauge length, fitting allowance and useful length to the printed tenth",
    methods: [taperUsefulLength],
    source: "ISO 7-1 table 1",
    provenance: "from-memory",
    run: () => {
      for (const [size, gaugeLength, allowance, useful] of R_LENGTHS) {
        const { gaugeLength_m: gauge, pitch_m: pitch } = G_THREADS[size];
        const length = taperUsefulLength({ gauge, pitch });
        assertAlmostEquals(gauge / MM, gaugeLength, 1e-9, size);
        assertAlmostEquals((length - gauge) / MM, allowance, 0.051, size);
        assertAlmostEquals(length / MM, useful, 0.051, size);
      }
    },
  },
  {
    name: "G threads: tolerances of class A, the major diameter's twice the pitch diameter's",
    methods: [],
    source: "ISO 228-1 table 1",
    provenance: "from-memory",
    run: () => {
      for (
        const [size, tolerance, minor] of [
          ["1/8", 0.107, 0.282],
          ["1/4", 0.125, 0.445],
          ["3/8", 0.125, 0.445],
          ["1/2", 0.142, 0.541],
          ["3/4", 0.142, 0.541],
        ] as const
      ) {
        const { screw, hole, nominal_m, flank_rad } = G_THREADS[size];
        const mm = (length_m: number) => Math.round(length_m / 1e-6) / 1000;
        assertEquals(mm(hole.pitchMax_m - hole.pitchMin_m), tolerance, size);
        assertEquals(mm(screw.pitchMax_m - screw.pitchMin_m), tolerance, size);
        assertEquals(mm(screw.majorMax_m - screw.majorMin_m), 2 * tolerance, size);
        assertEquals(mm(hole.minorMax_m - hole.minorMin_m), minor, size);
        assertAlmostEquals(screw.majorMax_m, nominal_m, 1e-12, size);
        assertAlmostEquals(screw.pitchMax_m, hole.pitchMin_m, 1e-12, size);
        assertAlmostEquals(flank_rad / DEGREE, 27.5, 1e-9, size);
      }
    },
  },
  {
    name: "families: 55 and 60 degrees, taper 1 in 16 or none",
    methods: [],
    source: "ASME B1.20.1, ASME B1.20.3, ISO 228-1, ISO 7-1",
    provenance: "from-memory",
    run: () => {
      const rows = Object.entries(PIPE_FAMILIES).map(([family, { flanks_rad, taper }]) => [
        family,
        Math.round(flanks_rad / DEGREE * 1e6) / 1e6,
        taper * 16,
      ]);
      assertEquals(rows, [["NPT", 60, 1], ["NPTF", 60, 1], ["G", 55, 0], ["R", 55, 1]]);
    },
  },
  {
    name: "NPT 1/16 and 3/8: pitch diameters, useful length and drills as printed",
    methods: [nptSmallEnd, nptFace, nptUsefulLength],
    source: "ASME B1.20.1 table 2; drill charts of the trade",
    provenance: "from-memory",
    run: () => {
      for (const [nps, perInch, e0, e1, l2, straight, reamed] of NPT_ROWS) {
        const { outside, pitch, smallEnd, atFace } = nptNumbers(nps);
        assertAlmostEquals(INCH / pitch, perInch, 1e-9, nps);
        assertAlmostEquals(smallEnd / INCH, e0, 6e-6, nps);
        assertAlmostEquals(atFace / INCH, e1, 6e-6, nps);
        assertAlmostEquals(nptUsefulLength({ outside, pitch }) / INCH, l2, 6e-5, nps);
        const { straightDrills, reamedDrill } = NPT_THREADS[nps];
        assertEquals(straightDrills.length, straight.length);
        straightDrills.forEach(({ diameter_m }, i) =>
          assertAlmostEquals(diameter_m / INCH, straight[i] ?? NaN, 6e-5, nps)
        );
        assertAlmostEquals(reamedDrill.diameter_m / INCH, reamed, 6e-5, nps);
      }
    },
  },
  {
    name: "clearance holes of M3, M10 and M12",
    methods: [],
    source: "ISO 273",
    provenance: "from-memory",
    run: () => {
      for (const [screw, close, medium, coarse] of CLEARANCE) {
        const { close_m, medium_m, coarse_m } = CLEARANCE_HOLES[screw];
        [[close_m, close], [medium_m, medium], [coarse_m, coarse]].forEach(([is = NaN, want]) =>
          assertAlmostEquals(is / MM, want ?? NaN, 1e-9, screw)
        );
      }
    },
  },
  {
    name: "feeds in inches: each band up to its diameter and not beyond",
    methods: [],
    source: "published feed ranges of high-speed steel drills",
    provenance: "from-memory",
    run: () => {
      for (const [upTo, from, to] of FEEDS) {
        const band = feedBand(upTo * INCH);
        assert(band, `${upTo} in`);
        // Millimetres are rounded from inches to two figures.
        assertAlmostEquals(band.from / INCH / from, 1, 0.017);
        assertAlmostEquals(band.to / INCH / to, 1, 0.017);
        assert(feedBand(upTo * INCH + 1e-6) !== band, `beyond ${upTo} in`);
      }
    },
  },
  {
    name: "pecking from 3 diameters, both ends or a special drill from 10",
    methods: [],
    source: "common practice, no source",
    provenance: "from-memory",
    run: () => assertEquals([PECK_FROM_DIAMETERS, DEEP_FROM_DIAMETERS], [3, 10]),
  },
  {
    name: "O-ring mouths and flats for washers",
    methods: [],
    source: "SAE J1926-1, ISO 6149-1 as in ports-hoses.json; ISO 9974-1, ISO 1179-1",
    provenance: "read-from-source",
    run: () => {
      for (const [id, flat, deep, says] of MOUTHS) {
        const { flat_m = NaN, mouth_m, remarks, seal } = PORTS[id];
        assertEquals(seal, "o-ring");
        assertAlmostEquals(flat_m / MM, flat, 1e-9, id);
        assertAlmostEquals(mouth_m / MM, deep, 1e-9, id);
        assert(remarks(inMm).some((text) => text.includes(says)), id);
      }
      for (
        const [id, flat] of [["M12x1.5-face", 18], ["M14x1.5-face", 20], ["G1/8-face", 15]] as const
      ) {
        assertAlmostEquals((PORTS[id].flat_m ?? NaN) / MM, flat, 1e-9, id);
        assertEquals(PORTS[id].mouth_m, 0);
      }
    },
  },
  {
    name: "an O-ring's mouth is wider than its thread and narrower than its flat",
    methods: [],
    source: "the ring must pass the thread and lie under the sensor's shoulder",
    provenance: "exact-solution",
    run: () => {
      for (const port of Object.values(PORTS)) {
        if (port.seal !== "o-ring") continue;
        const wide = Number(/([\d.]+) mm wide/.exec(port.remarks(inMm)[0] ?? "")?.[1]) * MM;
        assert(wide > threadOf(port.thread).nominal_m && wide < (port.flat_m ?? 0), port.id);
      }
    },
  },
  {
    name: "values of ours in a sensor port: oiled thread, 4 mm pilot, leads of the taps",
    methods: [],
    source:
      "nut factor 0.12 to 0.18 oiled, Shigley; leads by ASME B94.9, upper bottoming, middle plug",
    provenance: "from-memory",
    run: () => {
      const { preload_N = NaN, seatRing_m = NaN, tapLead_m } = lay();
      assertAlmostEquals(18 / (preload_N * 0.01), (0.12 + 0.18) / 2, 1e-9);
      assertAlmostEquals(seatRing_m, (0.009 - 0.004) / 2, 1e-12);
      assertAlmostEquals(tapLead_m, (2 + 1) * 0.001, 1e-12);
      const face = lay({ port: "M12x1.5-face" });
      assertAlmostEquals(face.tapLead_m, (3 + 5) / 2 * 0.0015, 1e-12);
    },
  },
  {
    name: "a plug tap's 6 mm of lead reaches the far wall of a gallery narrower than that",
    methods: [],
    source: "geometry of the hole",
    provenance: "exact-solution",
    run: () => {
      const told = (galleryBore_m: number): boolean =>
        lay({ port: "M12x1.5-face", galleryBore_m })
          .says.some((text) => text.includes("far wall"));
      assertEquals([told(0.00597), told(0.00603)], [true, false]);
    },
  },
];
