/** Checks of speeds by tool, of what a press turns, and of practices of the trade. */
import { assert, assertAlmostEquals, assertEquals } from "@std/assert";
import {
  CUTTING_SPEEDS,
  drillChoices,
  edgeSpeed,
  feedBand,
  flexibleHone,
  PORT_SHAPES,
  portProfile,
  reamingAllowance,
  SHOP_PRACTICE,
  spindleFor,
  threadOf,
  TOOL_SPEEDS,
} from "@/lib/thread/mod.ts";
import type { Check } from "../../helpers/checks.ts";
import { INCH, MM } from "./shorthand.ts";

const FOOT_A_MINUTE = 0.3048 / 60;

/** Drilling and reaming in one material with high-speed steel, feet a minute. */
const REAMED = [
  ["aluminium", 350, 350],
  ["mild steel", 100, 65],
  ["mild steel", 90, 60],
  ["stainless steel", 55, 35],
  ["stainless steel", 50, 30],
] as const;

/** Machine taps, feet a minute: one maker's table, and what two others allow. */
const TAPPED = [
  ["aluminium", 50, 70, 50, 150],
  ["brass", 60, 100, 50, 200],
  ["mild steel", 30, 50, 20, 60],
  ["stainless steel", 10, 20, 5, 35],
] as const;

const WIDE = { least_rev_s: 0.5, most_rev_s: 500 };
const inMm = (length_m: number): string => `${Math.round(length_m / MM * 1000) / 1000} mm`;

const NO_SOURCE = "common practice, no source";

export const speeds: Check[] = [
  {
    name: "edge of a tool: 611 rev/min at 1/2 in is 80 feet a minute, 4584 at 1/4 in is 300",
    methods: [edgeSpeed],
    source: "published worked examples, as in drilling.json",
    provenance: "read-from-source",
    run: () => {
      for (const [rpm, inches, feet] of [[611, 1 / 2, 80], [4584, 1 / 4, 300]] as const) {
        const speed = edgeSpeed({ speed: rpm / 60, diameter: inches * INCH });
        assertAlmostEquals(speed / FOOT_A_MINUTE, feet, 0.002 * feet);
      }
    },
  },
  {
    name: "reamers: no faster than published, and in steel within a third of it",
    methods: [],
    source: "a reamer maker's published table of drilling and reaming speeds",
    provenance: "read-from-source",
    run: () => {
      for (const [material, drilled, reamed] of REAMED) {
        const { from, to } = TOOL_SPEEDS.reamer.speeds[material];
        assert(from < reamed * FOOT_A_MINUTE, material);
        // Aluminium is published as fast as it is drilled, more than a hand feeds.
        if (material === "aluminium") assert(to <= reamed * FOOT_A_MINUTE);
        else assertAlmostEquals(to / (reamed * FOOT_A_MINUTE), 1, 1 / 3, material);
        assert(reamed / drilled >= 0.6);
      }
    },
  },
  {
    name: "reamers: half to two thirds of a drill's speed, two to three times its feed",
    methods: [],
    source: "Machinery's Handbook (two thirds); TM 1-420 (one half)",
    provenance: "from-memory",
    run: () => {
      for (const [material, drill] of Object.entries(CUTTING_SPEEDS)) {
        const { from, to } = TOOL_SPEEDS.reamer.speeds[material as keyof typeof CUTTING_SPEEDS];
        assertAlmostEquals(from / drill.from, 1 / 2, 1e-9);
        assertAlmostEquals(to / drill.to, 2 / 3, 1e-9);
      }
      assertEquals(TOOL_SPEEDS.reamer.feedShare, { from: 2, to: 3 });
    },
  },
  {
    name: "reamers: metal to leave by hole",
    methods: [],
    source: "a reamer maker's published table, inches on diameter",
    provenance: "read-from-source",
    run: () => {
      const rows = [[0.15, 5, 10], [0.25, 8, 12], [0.551, 10, 16], [1, 15, 30]] as const;
      for (const [hole, from, to] of rows) {
        const band = reamingAllowance(hole * INCH);
        assertAlmostEquals((band?.from ?? NaN) / INCH * 1000, from, 1e-9);
        assertAlmostEquals((band?.to ?? NaN) / INCH * 1000, to, 1e-9);
      }
      assertEquals([reamingAllowance(0.002), reamingAllowance(0.07)], [undefined, undefined]);
    },
  },
  {
    name: "countersinks: a quarter to a third of a drill's speed",
    methods: [],
    source: "published rules of the trade: 1/4, 1/3",
    provenance: "read-from-source",
    run: () => {
      const { from, to } = TOOL_SPEEDS.countersink.speeds.aluminium;
      assertAlmostEquals(CUTTING_SPEEDS.aluminium.from / from, 4, 1e-9);
      assertAlmostEquals(CUTTING_SPEEDS.aluminium.to / to, 3, 1e-9);
      assertEquals(TOOL_SPEEDS.countersink.feedShare, undefined);
    },
  },
  {
    name: "taps: one maker's published speeds, inside what others allow",
    methods: [],
    source: "three makers' published tables of machine tapping with high-speed steel taps",
    provenance: "read-from-source",
    run: () => {
      for (const [material, from, to, least, most] of TAPPED) {
        const band = TOOL_SPEEDS.tap.speeds[material];
        assertAlmostEquals(band.from / FOOT_A_MINUTE, from, 1e-9, material);
        assertAlmostEquals(band.to / FOOT_A_MINUTE, to, 1e-9, material);
        assert(from >= least && to <= most, material);
      }
    },
  },
  {
    name:
      "spotting and form drills run at half to all of a drill's speed, a 14 mm hone at 450 to 1050",
    methods: [],
    source: NO_SOURCE,
    provenance: "from-memory",
    run: () => {
      for (const tool of ["spotting drill", "form drill"] as const) {
        const { from, to } = TOOL_SPEEDS[tool].speeds.brass;
        assertAlmostEquals(from / CUTTING_SPEEDS.brass.from, 0.5, 1e-9);
        assertAlmostEquals(to / CUTTING_SPEEDS.brass.to, 1, 1e-9);
        assertEquals(TOOL_SPEEDS[tool].feedShare, { from: 0.5, to: 1 });
        assertEquals(TOOL_SPEEDS[tool].source, NO_SOURCE);
      }
      const { wanted, source } = spindleFor("stainless steel", "flexible hone", 0.014, WIDE);
      assertAlmostEquals(wanted.from * 60, 455, 1);
      assertAlmostEquals(wanted.to * 60, 1023, 1);
      assertEquals(source, NO_SOURCE);
    },
  },
  {
    name: "a press that turns anything gives the low end; a slow or a fast one says so",
    methods: [],
    source: "n = v / (pi d), and the press's own limits",
    provenance: "exact-solution",
    run: () => {
      const at = (least: number, most: number, tool: "drill" | "tap" = "drill") =>
        spindleFor("aluminium", tool, 0.009, { least_rev_s: least / 60, most_rev_s: most / 60 });
      const free = at(100, 10_000);
      assertAlmostEquals(free.speed_rev_s * 60, 60 / (Math.PI * 0.009), 1e-6);
      assertAlmostEquals(free.cutting_m_s * 60, 60, 1e-6);
      assertEquals(free.feed, feedBand(0.009));
      assertEquals([free.limitedBy, free.says.length], [undefined, 1]);
      const slow = at(500, 1500);
      assertAlmostEquals(slow.speed_rev_s * 60, 1500, 1e-9);
      assertEquals(slow.limitedBy, "fastest");
      assert(slow.says[0]?.includes("no faster than 1500 rev/min"));
      assert(slow.says[0]?.includes("2122 to 3183 rev/min"));
      // Within the band the press's slowest is no limit.
      assertEquals(at(2500, 5000).limitedBy, undefined);
      assertAlmostEquals(at(2500, 5000).speed_rev_s * 60, 2500, 1e-9);
      const fast = at(1000, 5000, "tap");
      assertAlmostEquals(fast.speed_rev_s * 60, 1000, 1e-9);
      assertEquals([fast.limitedBy, fast.feed], ["slowest", undefined]);
      assert(fast.says[0]?.includes("Turn it by hand"));
    },
  },
  {
    name: "no drill press reaches beyond a press's speeds, whatever the tool",
    methods: [],
    source: "the press's own limits",
    provenance: "exact-solution",
    run: () => {
      const press = { least_rev_s: 5, most_rev_s: 43 };
      for (const tool of Object.keys(TOOL_SPEEDS) as (keyof typeof TOOL_SPEEDS)[]) {
        for (const material of Object.keys(CUTTING_SPEEDS) as (keyof typeof CUTTING_SPEEDS)[]) {
          for (const mm of [0.5, 3, 9, 14, 25, 40]) {
            const { speed_rev_s, wanted, limitedBy } = spindleFor(material, tool, mm * MM, press);
            assert(speed_rev_s >= 5 && speed_rev_s <= 43);
            const inside = speed_rev_s >= wanted.from && speed_rev_s <= wanted.to;
            assertEquals(inside, limitedBy === undefined);
          }
        }
      }
    },
  },
  {
    name: "a 9 mm spotting drill of 90 degrees serves both the seat and the tapping size of M10x1",
    methods: [],
    source: NO_SOURCE,
    provenance: "from-memory",
    run: () => {
      assertAlmostEquals(threadOf("M10x1").tappingDrill_m / MM, 9, 1e-9);
      assertAlmostEquals(PORT_SHAPES["M10x1-cone"].drill_m / MM, 9, 1e-9);
      const { segments } = portProfile("M10x1-cone", { through_m: 0.02 });
      const seat = segments.find(({ cut }) => cut === "seat");
      assert(seat);
      assertAlmostEquals(seat.fromDiameter_m / MM, 9, 1e-9);
      // 45 degrees from the axis: as deep as the radius falls.
      const fall = (seat.fromDiameter_m - seat.toDiameter_m) / 2;
      assertAlmostEquals(seat.to_m - seat.from_m, fall, 1e-12);
      const { says, source } = SHOP_PRACTICE["one-drill-two-jobs"];
      assert(says(inMm).includes("9 mm spotting drill of 90 degrees does both jobs"));
      assertEquals(source, NO_SOURCE);
    },
  },
  {
    name: "pockets with a 14 mm O-ring bore are finished with a 14 mm flexible hone",
    methods: [],
    source: NO_SOURCE,
    provenance: "from-memory",
    run: () => {
      assertAlmostEquals(flexibleHone(0.014) / MM, 14, 1e-9);
      assertAlmostEquals(flexibleHone(0.5512 * INCH) / MM, 14, 1e-9);
      const text = SHOP_PRACTICE["hone-the-pocket"].says(inMm);
      assert(text.includes("14 mm for a bore of 14 mm") && text.includes("does not seal reliably"));
    },
  },
  {
    name: "one form drill can cut pilot and O-ring bore; long studs need the tap guided square",
    methods: [],
    source: NO_SOURCE,
    provenance: "from-memory",
    run: () => {
      const form = SHOP_PRACTICE["form-drill"].says(inMm);
      assert(form.includes("pilot and O-ring bore"));
      const tap = SHOP_PRACTICE["guide-the-tap"].says(inMm);
      assert(tap.includes("square to the face") && tap.includes("long stud"));
    },
  },
  {
    name:
      "drills for M10x1: 92 % on the ISO base is 77 % on the US base; 23/64 in and T are inside",
    methods: [],
    source: "ISO 2306, ISO 965-2 and the trade's percentages of thread, as in threads.json",
    provenance: "from-memory",
    run: () => {
      const [listed, metric, fraction, number, letter] = drillChoices("M10x1");
      assert(listed && metric && fraction && number && letter);
      assertEquals([listed.set, metric.set], ["listed", "metric"]);
      assertEquals([fraction.set, number.set, letter.set], ["fractional", "number", "letter"]);
      assertAlmostEquals(listed.heightIso, 0.924, 5e-4);
      assertAlmostEquals(listed.heightUs, 0.770, 5e-4);
      assertAlmostEquals(letter.error_m / MM, 0.0932, 1e-4);
      assertAlmostEquals(fraction.error_m / MM, 0.1281, 1e-4);
      const inside = [listed, metric, fraction, number, letter].map((each) => each.inside);
      assertEquals(inside, [true, true, true, false, true]);
    },
  },
  {
    name: "drills: share and error agree with the drill's own diameter for every thread",
    methods: [],
    source: "definition: height over 5/8 H and 3/4 H differ by 6/5",
    provenance: "exact-solution",
    run: () => {
      for (const name of ["M6x1", "M8x1", "M14x1.5", "7/16-20", "9/16-18", "G 1/8", "G 3/8"]) {
        const { tappingDrill_m } = threadOf(name);
        for (const { diameter_m, error_m, heightIso, heightUs } of drillChoices(name)) {
          assertAlmostEquals(diameter_m - error_m, tappingDrill_m, 1e-12, name);
          assertAlmostEquals(heightIso / heightUs, 6 / 5, 1e-9, name);
        }
      }
    },
  },
];
