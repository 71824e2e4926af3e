/** Glands and lead-ins against published tables and measured geometry. */
import { assert, assertEquals } from "@std/assert";
import { Working } from "@/lib/method/mod.ts";
import {
  glandDepth,
  glandDepthNarrow,
  glandDepthWide,
  glandFill,
  leadInLength,
  leadInMouth,
  oringGland,
  oringSqueeze,
  RADIAL_GLANDS,
  sizeOf,
  widestGap,
} from "@/lib/seal/mod.ts";
import { assertClose } from "../../helpers/assert_close.ts";
import type { Check } from "../../helpers/checks.ts";

const MM = 1e-3;
const INCH = 0.0254;

/** A maker's table: section and its tolerance, depth, groove width, squeeze [in], squeeze [%]. */
// deno-fmt-ignore
const GLANDS = [
  { section: 0.07, tolerance: 0.003, depth: [0.05, 0.055], width: 0.105, squeeze: [0.012, 0.023], percent: [18, 32], mouth: 0.083 },
  { section: 0.103, tolerance: 0.003, depth: [0.08, 0.086], width: 0.146, squeeze: [0.014, 0.026], percent: [14, 25], mouth: 0.122 },
  { section: 0.139, tolerance: 0.004, depth: [0.11, 0.116], width: 0.195, squeeze: [0.019, 0.033], percent: [14, 23], mouth: 0.157 },
  { section: 0.21, tolerance: 0.005, depth: [0.17, 0.176], width: 0.28, squeeze: [0.029, 0.045], percent: [14, 21], mouth: 0.236 },
] as const;

/** The table's gland with a ring that fits its groove without stretch. */
function glandOf({ section, tolerance, depth, width }: typeof GLANDS[number]) {
  const groove = 0.5 * INCH;
  const [least, most] = [groove + 2 * depth[0] * INCH, groove + 2 * depth[1] * INCH];
  const same = sizeOf(groove, 0, 0);
  return oringGland(new Working(), "gland", {
    bore: { least_m: least, nominal_m: (least + most) / 2, most_m: most },
    groove: same,
    grooveWidth: sizeOf(width * INCH, 0, 0),
    land: sizeOf(least, 0, 0),
    insideDiameter: same,
    section: sizeOf(section * INCH, -tolerance * INCH, tolerance * INCH),
  });
}

/** Widths of a ring-shaped space, measured around: a part in a bore, off its axis by a shift. */
function widthsAround(bore: number, part: number, shift: number): number[] {
  return Array.from({ length: 720 }, (_, i) => {
    const angle = i * Math.PI / 360;
    const [x, y] = [shift + part / 2 * Math.cos(angle), part / 2 * Math.sin(angle)];
    return bore / 2 - Math.hypot(x, y);
  });
}

/** Checks of glands and lead-ins. */
export const GLAND_CHECKS: readonly Check[] = [
  {
    name: "least and most squeeze of published glands, by inch and by percent",
    methods: [glandDepth, oringSqueeze],
    source: "A seal maker's public table of static radial glands, 0.070 to 0.210 in",
    provenance: "read-from-source",
    run: () => {
      for (const row of GLANDS) {
        const { least, most } = glandOf(row).laws.inside;
        const thin = row.section - row.tolerance;
        const thick = row.section + row.tolerance;
        assertClose(least * thin, row.squeeze[0], 1e-9, `${row.section}, least`);
        assertClose(most * thick, row.squeeze[1], 1e-9, `${row.section}, most`);
        assertClose(100 * least, row.percent[0], 0.03, `${row.section}, least %`);
        assertClose(100 * most, row.percent[1], 0.03, `${row.section}, most %`);
      }
      assertEquals(RADIAL_GLANDS.length, GLANDS.length);
      RADIAL_GLANDS.forEach(({ squeeze }, i) =>
        assertEquals(
          [squeeze.min, squeeze.max].map((share) => Math.round(100 * share)),
          [...GLANDS[i]?.percent ?? []],
        )
      );
    },
  },
  {
    name: "published glands are filled to about seven tenths",
    methods: [glandFill],
    source: "The same table with its groove widths; design notes ask for 65 to 85 %",
    provenance: "read-from-source",
    run: () => {
      for (const row of GLANDS) {
        const { fillNominal } = glandOf(row);
        assert(fillNominal > 0.65 && fillNominal < 0.75, `${row.section}: ${fillNominal}`);
      }
    },
  },
  {
    name: "fill is the share of points in the gland that the ring covers",
    methods: [glandFill],
    source: "Points counted on a grid",
    provenance: "exact-solution",
    run: () => {
      // Unsqueezed, in a gland as deep as the ring and wider, so that all of it lies inside.
      const [section, width, grid] = [2, 3, 600];
      let inside = 0;
      for (let i = 0; i < grid; i++) {
        for (let j = 0; j < grid; j++) {
          const [x, y] = [((i + 0.5) / grid - 0.5) * width, ((j + 0.5) / grid - 0.5) * section];
          if (x * x + y * y <= section ** 2 / 4) inside++;
        }
      }
      const fill = glandFill({ section: section * MM, depth: section * MM, width: width * MM });
      assertClose(fill, inside / grid ** 2, 1e-3);
    },
  },
  {
    name: "depths and gaps around a part that lies against its bore, measured all round",
    methods: [glandDepth, glandDepthWide, glandDepthNarrow, widestGap],
    source: "Two circles, the space between them measured at 720 points",
    provenance: "exact-solution",
    run: () => {
      for (
        const [bore, land, groove] of [[14, 13.8, 8.3], [14, 13.6, 8.2], [11, 10.9, 7]] as const
      ) {
        const shift = (bore - land) / 2;
        const sides = { bore: bore * MM, land: land * MM, groove: groove * MM };
        const depths = widthsAround(bore, groove, shift);
        assertClose(glandDepthWide(sides) / MM, Math.max(...depths), 1e-9, "wide");
        assertClose(glandDepthNarrow(sides) / MM, Math.min(...depths), 1e-9, "narrow");
        assertClose(widestGap(sides) / MM, Math.max(...widthsAround(bore, land, shift)), 1e-9);
        const centred = widthsAround(bore, groove, 0);
        assertClose(glandDepth(sides) / MM, Math.max(...centred), 1e-9, "on one axis");
      }
    },
  },
  {
    name: "a cone of the length found is as wide as the mouth, walked in small steps",
    methods: [leadInMouth, leadInLength],
    source: "Slope of the cone's side summed step by step",
    provenance: "exact-solution",
    run: () => {
      for (const degrees of [15, 20, 30]) {
        const angle = degrees * Math.PI / 180;
        const outside = 15.02 * MM;
        const mouth = leadInMouth({ outside, clearance: 0.2 * MM });
        const length = leadInLength({ mouth, bore: 14 * MM, angle });
        let radius = 7 * MM;
        // A thousand steps along the side, each as long as the side asks.
        const step = length / 1000 / Math.cos(angle);
        for (let i = 0; i < 1000; i++) radius += step * Math.sin(angle);
        assertClose(2 * radius - outside, 0.2 * MM, 1e-9, `${degrees} degrees`);
      }
    },
  },
  {
    name: "lead-ins of published glands are no longer than a maker's table asks",
    methods: [leadInMouth, leadInLength],
    source: "A seal maker's public table of lead-ins at 15 degrees, which covers every squeeze",
    provenance: "second-correlation",
    run: () => {
      for (const { section, depth, mouth: asked, tolerance } of GLANDS) {
        // A ring without stretch: half an inch of groove, least depth, thickest section.
        const outside = (0.5 + 2 * (section + tolerance)) * INCH;
        const mouth = leadInMouth({ outside, clearance: 0 });
        const bore = (0.5 + 2 * depth[0]) * INCH;
        const length = leadInLength({ mouth, bore, angle: Math.PI / 12 }) / INCH;
        assert(length <= 1.05 * asked && length > 0.6 * asked, `${section}: ${length}, ${asked}`);
      }
    },
  },
];
