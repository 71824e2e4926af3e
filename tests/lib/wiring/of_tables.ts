/** The tables of wires and fuses against what standards and data sheets print. */
import { assert, assertAlmostEquals, assertEquals } from "@std/assert";
import {
  awgDiameter,
  BLADE_FUSES_A,
  conductorResistance,
  COPPER_COEFFICIENT_1_K,
  FUSE_FACTOR,
  resistanceRatio,
  WIRE_REFERENCE_K,
  wireArea,
  WIRES,
  type WireSize,
} from "@/lib/wiring/mod.ts";
import { assertClose } from "../../helpers/assert_close.ts";
import type { Check } from "../../helpers/checks.ts";

type Rows<Row extends readonly unknown[]> = readonly (readonly [WireSize, ...Row])[];

/** NFPA 70 chapter 9 table 8, stranded, uncoated: area [circular mil], ohm per 1000 ft at 75 °C. */
const NFPA_TABLE_8: Rows<[circularMils: number, ohm: number]> = [
  ["AWG 18", 1620, 7.95],
  ["AWG 16", 2580, 4.99],
  ["AWG 14", 4110, 3.14],
  ["AWG 12", 6530, 1.98],
  ["AWG 10", 10380, 1.24],
  ["AWG 8", 16510, 0.778],
];

/** IEC 60228 class 5, plain: largest resistance that no reference case holds [ohm/km]. */
const CLASS_5: Rows<[ohm: number]> = [["1 mm2", 19.5], ["10 mm2", 1.91], ["16 mm2", 1.21]];

/** Thin-wall wire to ISO 6722 class B: largest outside [mm], maker's current [A]. */
const THIN_WALL: Rows<[outside: number, current: number]> = [
  ["0.75 mm2", 1.9, 14],
  ["1 mm2", 2.1, 16.5],
  ["1.5 mm2", 2.4, 21],
  ["2.5 mm2", 3.0, 29],
  ["4 mm2", 3.7, 39],
  ["6 mm2", 4.3, 50],
  ["10 mm2", 6.0, 70],
];

/** SAE J1128 GXL: outside [in]. */
const GXL: Rows<[outside: number]> = [
  ["AWG 18", 0.102],
  ["AWG 16", 0.118],
  ["AWG 14", 0.137],
  ["AWG 12", 0.160],
  ["AWG 10", 0.191],
  ["AWG 8", 0.234],
];

/** 33 CFR 183.425 table 5, insulation of 60 °C in air of 30 °C [A]. */
const BOATS_60: Rows<[current: number]> = [
  ["AWG 18", 10],
  ["AWG 16", 15],
  ["AWG 14", 20],
  ["AWG 12", 25],
  ["AWG 10", 40],
  ["AWG 8", 55],
];

/** Checks of the tables. */
export const tableChecks: Check[] = [
  {
    name: "stranded gauges have the area and resistance that the electrical code prints",
    methods: [awgDiameter, wireArea, conductorResistance, resistanceRatio],
    source: "NFPA 70 chapter 9 table 8",
    provenance: "read-from-source",
    run: () => {
      const ratio = resistanceRatio({
        temperature: 348.15,
        reference: WIRE_REFERENCE_K,
        coefficient: COPPER_COEFFICIENT_1_K,
      });
      for (const [size, circularMils, ohm] of NFPA_TABLE_8) {
        const { area_m2, resistance20_ohm_m } = WIRES[size];
        assertClose(area_m2, circularMils * Math.PI / 4 * 0.0254e-3 ** 2, 3e-3, size);
        assertClose(resistance20_ohm_m * ratio * 304.8, ohm, 6e-3, size);
      }
    },
  },
  {
    name: "metric wires that no case holds resist what class 5 allows at the most",
    methods: [],
    source: "IEC 60228 table 3, class 5, plain",
    provenance: "from-memory",
    run: () => {
      for (const [size, ohm] of CLASS_5) {
        assertClose(WIRES[size].resistance20_ohm_m, ohm / 1e3, 1e-12, size);
      }
    },
  },
  {
    name: "metric wires are as thick outside as the standard allows, and rated below their maker's",
    methods: [],
    source: "A maker's data sheet of thin-wall wire to ISO 6722 class B",
    provenance: "read-from-source",
    run: () => {
      for (const [size, outside, current] of THIN_WALL) {
        assertClose(WIRES[size].outside_m, outside / 1e3, 1e-12, size);
        assert(WIRES[size].rating_A < 0.7 * current, size);
      }
    },
  },
  {
    name: "gauges are as thick outside as wire for engine compartments",
    methods: [],
    source: "A maker's data sheet of wire to SAE J1128 type GXL",
    provenance: "read-from-source",
    run: () => {
      for (const [size, outside] of GXL) {
        // The sheet's millimetres are rounded to tenths.
        assertAlmostEquals(WIRES[size].outside_m, outside * 0.0254, 0.06e-3, size);
      }
    },
  },
  {
    name: "gauges of 18 to 10 are rated as small conductors are fused",
    methods: [],
    source: "NFPA 70 section 240.4(D)",
    provenance: "read-from-source",
    run: () => {
      const sizes = ["AWG 18", "AWG 16", "AWG 14", "AWG 12", "AWG 10"] as const;
      assertEquals(sizes.map((size) => WIRES[size].rating_A), [7, 10, 15, 20, 30]);
    },
  },
  {
    name: "gauges are rated below what boats allow the poorest insulation",
    methods: [],
    source: "33 CFR 183.425 table 5, 60 °C",
    provenance: "read-from-source",
    run: () => {
      for (const [size, current] of BOATS_60) assert(WIRES[size].rating_A < current, size);
    },
  },
  {
    name: "metric wires of 4 mm2 and more are rated as cable in conduit at 40 °C",
    methods: [],
    source: "IEC 60364-5-52 method B2 at 40 °C, as a machine's manual lists it",
    provenance: "read-from-source",
    run: () => {
      const sizes = ["4 mm2", "6 mm2", "10 mm2", "16 mm2"] as const;
      assertEquals(sizes.map((size) => WIRES[size].rating_A), [23, 30, 40, 54]);
    },
  },
  {
    name: "metric wires of 1.5 and 2.5 mm2 are rated as cable in conduit, 30 °C brought to 40 °C",
    methods: [],
    source: "IEC 60364-5-52 tables B.52.4 (15 and 20 A) and B.52.14 (0.87)",
    provenance: "from-memory",
    run: () => {
      assertClose(WIRES["1.5 mm2"].rating_A, 15 * 0.87, 5e-3);
      assertClose(WIRES["2.5 mm2"].rating_A, 20 * 0.87, 5e-3);
    },
  },
  {
    name:
      "what no sheet at hand prints is as remembered: thinnest ratings, thickest of each family",
    methods: [],
    source: "IEC 60204-1 table 6 (B2); NFPA 70 table 310.16 at 60 °C; ISO 6722 thin wall",
    provenance: "from-memory",
    run: () => {
      assertClose(WIRES["16 mm2"].outside_m, 7.2e-3, 1e-12);
      const sizes = ["0.75 mm2", "1 mm2", "AWG 8"] as const;
      assertEquals(sizes.map((size) => WIRES[size].rating_A), [8.5, 10.1, 40]);
    },
  },
  {
    name: "blade fuses come in the usual ratings, loaded to 80 % at the most",
    methods: [],
    source: "ISO 8820-3; NFPA 70 section 210.20(A)",
    provenance: "from-memory",
    run: () => {
      assertEquals(BLADE_FUSES_A, [3, 5, 7.5, 10, 15, 20, 25, 30, 40]);
      assertEquals(1 / FUSE_FACTOR, 0.8);
    },
  },
];
