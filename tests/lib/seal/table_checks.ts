/** Sizes, fits and gaps against second tables and formulas. */
import { assert } from "@std/assert";
import {
  gapAllowed,
  type HoleGrade,
  holeTolerance,
  INCH_RINGS,
  insideTolerance,
} from "@/lib/seal/mod.ts";
import { assertClose } from "../../helpers/assert_close.ts";
import type { Check } from "../../helpers/checks.ts";

const MM = 1e-3;
const INCH = 0.0254;

/** Checks of sizes, fits and gaps. */
export const TABLE_CHECKS: readonly Check[] = [
  {
    name: "tolerances of inside diameters for general use",
    methods: [insideTolerance],
    source: "A public table after ISO 3601-1, class B, 5 to 640 mm",
    provenance: "read-from-source",
    run: () => {
      // deno-fmt-ignore
      for (
        const [inside, tolerance] of [[5, 0.15], [10, 0.19], [20, 0.26], [40, 0.41], [80, 0.69], [160, 1.23], [320, 2.27], [640, 4.28]] as const
      ) {
        const found = insideTolerance({ insideDiameter: inside * MM }) / MM;
        assert(Math.abs(found - tolerance) <= 0.0065, `${inside}: ${found}, published ${tolerance}`);
      }
    },
  },
  {
    name: "inch rings step by a sixteenth within a section",
    methods: [],
    source: "SAE AS568: nominal sizes in sixteenths, rounded to a thousandth",
    provenance: "second-correlation",
    run: () => {
      const inches = (name: string) => {
        const ring = INCH_RINGS.find((r) => r.name === name);
        assert(ring, name);
        return ring.insideDiameter.nominal_m / INCH;
      };
      for (
        const [from, to, first] of [[10, 16, 0.239], [108, 116, 0.237], [201, 210, 0.171]] as const
      ) {
        for (let dash = from; dash <= to; dash++) {
          const name = `-${`${dash}`.padStart(3, "0")}`;
          const stepped = first + (dash - from) / 16;
          assert(Math.abs(inches(name) - stepped) < 1.01e-3, `${name}: ${inches(name)}`);
        }
      }
      assert(Math.abs(inches("-009") - inches("-008") - 1 / 32) < 1.01e-3);
    },
  },
  {
    name: "fits of holes by the formula behind the table",
    methods: [],
    source: "ISO 286-1: i = 0.45 D^(1/3) + 0.001 D; IT7 16 i, IT8 25 i, IT9 40 i, IT11 100 i",
    provenance: "second-correlation",
    run: () => {
      const units: Readonly<Record<HoleGrade, number>> = { H7: 16, H8: 25, H9: 40, H11: 100 };
      // deno-fmt-ignore
      for (const [over, upTo] of [[3, 6], [6, 10], [10, 18], [18, 30], [30, 50]] as const) {
        const mean = Math.sqrt(over * upTo);
        for (const grade of Object.keys(units) as HoleGrade[]) {
          const formula = units[grade] * (0.45 * Math.cbrt(mean) + 0.001 * mean);
          const { most_m, nominal_m } = holeTolerance(grade, upTo * MM);
          assertClose((most_m - nominal_m) * 1e6, formula, 0.06, `${grade} to ${upTo}`);
        }
      }
    },
  },
  {
    name: "gaps at 500 psi by a second table",
    methods: [],
    source: "A second seal maker's public table: 0.015 in at 70, 0.025 in at 90 Shore A",
    provenance: "second-correlation",
    run: () => {
      assertClose(gapAllowed(70, 3.4e6) ?? 0, 0.015 * INCH, 0.13);
      assertClose(gapAllowed(90, 3.4e6) ?? 0, 0.025 * INCH, 0.13);
    },
  },
];
