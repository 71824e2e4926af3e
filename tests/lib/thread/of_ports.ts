/** Answers to the cases of ports and flares, and checks of what the cases leave out. */
import { assert, assertAlmostEquals, assertEquals } from "@std/assert";
import { flowAtVelocity } from "@/lib/flow/mod.ts";
import {
  FACE_PORTS,
  type FaceThread,
  FLARE_SIZES,
  type FlareDash,
  FLARES,
  flaresMate,
  NPT_THREADS,
  nptHeight,
  nptHoleThread,
  nptMinorAtFace,
  O_RING_PORT_SCOPE_Pa,
  O_RING_PORTS,
  type ORingPort,
  PORT_SHAPES,
  portRingOutside,
  portRingOverSeat,
  PORTS,
  threadOf,
  tubeBore,
  wrongFlareScrewsOn,
} from "@/lib/thread/mod.ts";
import type { Answer, Answers, Check } from "../../helpers/checks.ts";
import { DEGREE, INCH, MM, nptNumbers } from "./shorthand.ts";

const OF_LINE = { later: "answered in tests/lib/line: hoses and velocities" };

const byDash = (dash: number): ORingPort => {
  const port = Object.values(O_RING_PORTS).find((each) => each.dash === `${dash}`);
  assert(port, `no port ${dash}`);
  return port;
};

const byThread = (thread: string): ORingPort => {
  const port = Object.values(O_RING_PORTS).find((each) => each.thread === thread);
  assert(port, `no port ${thread}`);
  return port;
};

const flareOf = (dash: number) => FLARE_SIZES[`${dash}` as FlareDash];

const SHAPE = (port: ORingPort) => ({
  full_thread_min_mm: port.fullThread_m / MM,
  tap_drill_depth_min_mm: port.drillDepth_m / MM,
  seat_dia_d5_mm: port.seat_m / MM,
  cone_angle_from_axis_deg: port.coneAngle_rad / DEGREE,
});

const gap: Answer = {
  methods: [portRingOutside, portRingOverSeat],
  run: ({ oring_id_mm, oring_cs_mm, seat_dia_mm }) => {
    const outside = portRingOutside({ inside: oring_id_mm * MM, section: oring_cs_mm * MM });
    return {
      oring_od_mm: outside / MM,
      od_minus_seat_mm: portRingOverSeat({ outside, seat: seat_dia_mm * MM }) / MM,
    };
  },
};

export const ports: Answers = {
  "straight-thread O-ring port (inch)": {
    methods: [],
    run: ({ dash }) => {
      const port = byDash(dash);
      return {
        ...SHAPE(port),
        thread: `${port.thread} UN/UNF-2B`,
        spotface_dia_min_mm: port.spotface_m / MM,
        cone_depth_mm: port.coneDepth_m / MM,
      };
    },
  },
  "metric O-ring port": {
    methods: [],
    run: ({ thread }) => {
      const port = byThread(thread);
      return { ...SHAPE(port), spotface_dia_mm: port.spotface_m / MM };
    },
  },
  "O-ring of the port": {
    methods: [],
    run: ({ dash }) => {
      const { name, inside_m, section_m } = byDash(dash).ring;
      return {
        as568: name.replace("AS568", ""),
        id_in: inside_m / INCH,
        cs_in: section_m / INCH,
        id_mm: inside_m / MM,
        cs_mm: section_m / MM,
      };
    },
  },
  "O-ring for the metric port": {
    methods: [],
    run: ({ thread }) => {
      const { inside_m, section_m } = byThread(thread).ring;
      return { id_mm: inside_m / MM, cs_mm: section_m / MM };
    },
  },
  "gap check: O-ring free OD against the seat diameter": gap,
  "working-pressure scope of the port standard": {
    methods: [],
    run: () => ({
      nonadjustable_max_MPa: O_RING_PORT_SCOPE_Pa.nonadjustable / 1e6,
      adjustable_max_MPa: O_RING_PORT_SCOPE_Pa.adjustable / 1e6,
    }),
  },
  "37-degree flare size": {
    methods: [],
    run: ({ dash }) => {
      const { tube_m, thread } = flareOf(dash);
      return { tube_od_in: tube_m / INCH, tube_od_mm: tube_m / MM, thread };
    },
  },
  "through-bore of the flare connector": {
    methods: [],
    run: ({ dash }) => ({ bore_mm: flareOf(dash).bore_m / MM }),
  },
  "37 and 45 degree flares do not mix": {
    methods: [],
    run: () => ({
      interchangeable: flaresMate("37 degrees", "45 degrees"),
      included_a_deg: Math.round(FLARES["37 degrees"].included_rad / DEGREE * 1e9) / 1e9,
      included_b_deg: Math.round(FLARES["45 degrees"].included_rad / DEGREE * 1e9) / 1e9,
    }),
  },
  "tube bore from OD and wall": {
    methods: [tubeBore],
    run: ({ od_mm, wall_mm }) => {
      const bore = tubeBore({ outside: od_mm * MM, wall: wall_mm * MM });
      return { id_mm: bore / MM, area_mm2: flowAtVelocity({ velocity: 1, bore }) / MM ** 2 };
    },
  },
  "hose inside diameter*": OF_LINE,
  "mean velocity in the hose": OF_LINE,
};

/** AS568 900 series: outside diameters as they are listed [in]. */
const RING_OUTSIDES = [
  ["7/16-20", 0.495],
  ["9/16-18", 0.624],
  ["3/4-16", 0.818],
  ["7/8-14", 0.949],
  ["1 1/16-12", 1.156],
] as const;

/** Copper tube by ASTM B88: outside, wall, inside [in]. */
const TUBES = [[0.5, 0.035, 0.43], [0.625, 0.04, 0.545], [0.5, 0.025, 0.45]] as const;

/** ASME B1.20.1 table 2: minor diameter at the small end of the pipe, K0 [in]. */
const SMALL_ENDS = [
  ["1/8", 0.3339],
  ["1/4", 0.4329],
  ["3/8", 0.5676],
  ["1/2", 0.7013],
  ["3/4", 0.9105],
] as const;

/** Hand-tight length, wrench make-up and bored depth of holes for taper pipe threads [mm]. */
const NPT_HOLES = [
  ["1/8", 4.102, 2.822, 12.05],
  ["1/4", 5.786, 4.234, 17.45],
  ["3/8", 6.096, 4.234, 17.65],
] as const;

/** Spotface, full thread, tapping drill [mm]. */
const FACES: readonly (readonly [FaceThread, number, number, number])[] = [
  ["M10x1", 15, 8, 13.5],
  ["M12x1.5", 18, 12, 18.5],
  ["M14x1.5", 20, 12, 18.5],
  ["M16x1.5", 22, 12, 18.5],
  ["M18x1.5", 24, 12, 18.5],
  ["M22x1.5", 28, 14, 20.5],
  ["G 1/8", 15, 8, 13],
  ["G 1/4", 19, 12, 18.5],
  ["G 3/8", 23, 12, 18.5],
];

/** Seat, full thread, tapping drill, cone's depth [mm] and angle [degrees] of metric O-ring ports. */
const METRIC = [
  ["M10x1", 11.1, 10, 11.5, 1.6, 12],
  ["M12x1.5", 13.8, 11.5, 14, 2.4, 15],
  ["M14x1.5", 15.8, 11.5, 14, 2.4, 15],
  ["M16x1.5", 17.8, 13, 15.5, 2.4, 15],
  ["M22x1.5", 23.8, 15.5, 18, 2.4, 15],
] as const;

const PORT_CHART = "a maker's published chart of stud and port forms: DIN 3852-1 and -2, ISO 6149";

export const ofPorts: Check[] = [
  {
    name: "O-rings of inch ports are as wide outside as they are listed",
    methods: [portRingOutside],
    source: "AS568 900 series, listed outside diameters",
    provenance: "from-memory",
    run: () => {
      for (const [thread, outside] of RING_OUTSIDES) {
        const { inside_m: inside, section_m: section } = O_RING_PORTS[thread].ring;
        assertAlmostEquals(portRingOutside({ inside, section }) / INCH, outside, 6e-4, thread);
      }
    },
  },
  {
    name: "the ring of M10x1 is 11.3 mm wide, its seat 11.1",
    methods: [portRingOutside, portRingOverSeat],
    source: "ISO 6149-1 and -2 as noted beside case C-6149-M10x1-oring",
    provenance: "from-memory",
    run: () => {
      const { ring: { inside_m: inside, section_m: section }, seat_m: seat } = O_RING_PORTS.M10x1;
      const outside = portRingOutside({ inside, section });
      assertAlmostEquals(outside / MM, 11.3, 1e-9);
      assertAlmostEquals(portRingOverSeat({ outside, seat }) / MM, 0.2, 1e-9);
    },
  },
  {
    name: "every ring is narrower than its thread and within 0.3 mm as wide as its seat",
    methods: [portRingOutside, portRingOverSeat],
    source: "what an O-ring port does: the ring grips the stud and fills the mouth of the cone",
    provenance: "exact-solution",
    run: () => {
      for (const { ring, thread, seat_m, spotface_m } of Object.values(O_RING_PORTS)) {
        const outside = portRingOutside({ inside: ring.inside_m, section: ring.section_m });
        assert(Math.abs(portRingOverSeat({ outside, seat: seat_m })) < 0.3 * MM, thread);
        assert(seat_m < spotface_m, thread);
        if (thread === "1 5/16-12") continue; // larger than any thread of the tables
        assert(ring.inside_m < threadOf(thread).nominal_m, thread);
      }
    },
  },
  {
    name: "metric O-ring ports",
    methods: [],
    source: PORT_CHART,
    provenance: "read-from-source",
    run: () => {
      for (const [thread, seat, full, drill, cone, angle] of METRIC) {
        const port = O_RING_PORTS[thread];
        [
          [port.seat_m / MM, seat],
          [port.fullThread_m / MM, full],
          [port.drillDepth_m / MM, drill],
          [port.coneDepth_m / MM, cone],
          [port.coneAngle_rad / DEGREE, angle],
        ].forEach(([is = NaN, want]) => assertAlmostEquals(is, want ?? NaN, 1e-9, thread));
      }
    },
  },
  {
    name: "M8x1, and the inch ports -3, -5 and -10 that no case holds",
    methods: [],
    source: "ISO 6149-1, SAE J1926-1; no published table found that could be read",
    provenance: "from-memory",
    run: () => {
      const rows = (["M8x1", "3/8-24", "1/2-20", "7/8-14"] as const).map((thread) => {
        const { seat_m, spotface_m, coneDepth_m, fullThread_m, drillDepth_m } =
          O_RING_PORTS[thread];
        return [seat_m, spotface_m, coneDepth_m, fullThread_m, drillDepth_m]
          .map((length_m) => Math.round(length_m * 1e5) / 100);
      });
      assertEquals(rows, [
        [9.1, 17, 1.6, 10, 11.5],
        [10.7, 19, 1.9, 10, 12],
        [14, 23, 2.4, 11.5, 14],
        [23.9, 34, 2.5, 16.7, 20],
      ]);
    },
  },
  {
    name: "ports with a washer",
    methods: [],
    source: PORT_CHART,
    provenance: "read-from-source",
    run: () => {
      assertEquals(Object.keys(FACE_PORTS), FACES.map(([thread]) => thread));
      for (const [thread, flat, full, drill] of FACES) {
        const { flat_m, fullThread_m, drillDepth_m } = FACE_PORTS[thread];
        assertAlmostEquals(flat_m / MM, flat, 1e-9, thread);
        assertAlmostEquals(fullThread_m / MM, full, 1e-9, thread);
        assertAlmostEquals(drillDepth_m / MM, drill, 1e-9, thread);
      }
    },
  },
  {
    name: "minor diameter of an NPT thread, at the small end of the pipe",
    methods: [nptMinorAtFace],
    source: "ASME B1.20.1 table 2, K0",
    provenance: "from-memory",
    run: () => {
      for (const [nps, minor] of SMALL_ENDS) {
        const { smallEnd, pitch } = nptNumbers(nps);
        const found = nptMinorAtFace({ atFace: smallEnd, height: nptHeight({ pitch }) });
        assertAlmostEquals(found / INCH, minor, 6e-5, nps);
      }
    },
  },
  {
    name: "holes for NPT: full thread L1 + L3, drilled as deep as a chart of the trade has it",
    methods: [nptHoleThread],
    source: "a tap maker's published table of bored holes for taper pipe threads",
    provenance: "read-from-source",
    run: () => {
      for (const [nps, handTight, wrench, bored] of NPT_HOLES) {
        const { handTight_m, pitch_m: pitch } = NPT_THREADS[nps];
        const full = nptHoleThread({ handTight: handTight_m, pitch });
        assertAlmostEquals(full / MM, handTight + wrench, 2e-3, nps);
        const shape = PORT_SHAPES[`${nps}-NPT`];
        assertEquals(shape.fullThread_m, full, nps);
        const deep = shape.drillDepth_m / MM;
        assert(deep >= bored && deep < 1.03 * bored, `${nps}: ${deep}, published ${bored}`);
      }
    },
  },
  {
    name: "bores of copper tube",
    methods: [tubeBore],
    source: "ASTM B88, types L and M",
    provenance: "from-memory",
    run: () => {
      for (const [outside, wall, inside] of TUBES) {
        const bore = tubeBore({ outside: outside * INCH, wall: wall * INCH });
        assertAlmostEquals(bore / INCH, inside, 1e-9);
      }
    },
  },
  {
    name: "a 45 degree nut screws onto a 37 degree fitting in -2 to -5, -8 and -10",
    methods: [],
    source: "SAE J514 and J512, as noted beside case C-flare-angle",
    provenance: "from-memory",
    run: () => {
      const sizes = (Object.keys(FLARE_SIZES) as FlareDash[]).filter(wrongFlareScrewsOn);
      assertEquals(sizes, ["-2", "-3", "-4", "-5", "-8", "-10"]);
    },
  },
  {
    name: "bores of flare connectors and flare threads that no case holds",
    methods: [],
    source: "SAE J514, drill through the connector",
    provenance: "from-memory",
    run: () => {
      const rows = (["-2", "-3", "-5", "-10", "-16"] as const).map((dash) => {
        const { thread, bore_m } = FLARE_SIZES[dash];
        return [thread, Math.round(bore_m / INCH * 1000)];
      });
      assertEquals(rows, [
        ["5/16-24", 62],
        ["3/8-24", 125],
        ["1/2-20", 234],
        ["7/8-14", 484],
        ["1 5/16-12", 844],
      ]);
    },
  },
  {
    name: "flare and O-ring port of a size have one thread",
    methods: [],
    source: "SAE J514 and J1926-1: one stud, one size",
    provenance: "exact-solution",
    run: () => {
      for (const { dash, thread } of Object.values(O_RING_PORTS)) {
        if (dash === undefined) continue;
        assertEquals(FLARE_SIZES[dash as FlareDash].thread, thread, dash);
      }
    },
  },
  {
    name: "forms of the sensor's ports say what the ports say",
    methods: [],
    source: "one port, one form",
    provenance: "exact-solution",
    run: () => {
      for (const port of Object.values(PORTS)) {
        const shape = PORT_SHAPES[port.id];
        assertEquals(
          [shape.title, shape.thread, shape.seal, shape.drill_m, shape.pitch_m, shape.nominal_m],
          [port.title, port.thread, port.seal, port.tappingDrill_m, port.pitch_m, port.nominal_m],
        );
        assertEquals([shape.flat_m, shape.mouth?.deep_m ?? 0], [port.flat_m, port.mouth_m]);
      }
      for (const [id, shape] of Object.entries(PORT_SHAPES)) assertEquals(shape.id, id);
    },
  },
];
