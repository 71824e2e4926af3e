/** A stretched ring against volumes kept and the published curve. */
import { assert } from "@std/assert";
import { findRoot } from "@/lib/basics/mod.ts";
import {
  fittedOutside,
  oringStretch,
  sectionByCurve,
  sectionByInside,
  sectionByVolume,
} from "@/lib/seal/mod.ts";
import { assertClose } from "../../helpers/assert_close.ts";
import type { Check } from "../../helpers/checks.ts";

const MM = 1e-3;

/** Volume of a torus by its outer and inner diameter, summed in slices across its axis. */
function torusVolume(inside: number, section: number): number {
  const slices = 4000;
  let sum = 0;
  for (let i = 0; i < slices; i++) {
    const half = Math.sqrt((section / 2) ** 2 - (((i + 0.5) / slices - 0.5) * section) ** 2);
    const mean = (inside + section) / 2;
    sum += Math.PI * ((mean + half) ** 2 - (mean - half) ** 2) * section / slices;
  }
  return sum;
}

/** Checks of stretched rings. */
export const SECTION_CHECKS: readonly Check[] = [
  {
    name: "stretch is what marks along the inside move apart",
    methods: [oringStretch],
    source: "Length of a polygon of a thousand sides, free and fitted",
    provenance: "exact-solution",
    run: () => {
      const around = (diameter: number) => 1000 * diameter * Math.sin(Math.PI / 1000);
      for (const [inside, groove] of [[7.52, 8.3], [10.82, 11.2], [9.19, 9.1]] as const) {
        const stretch = oringStretch({ insideDiameter: inside * MM, groove: groove * MM });
        assertClose(1 + stretch, around(groove) / around(inside), 1e-12);
      }
    },
  },
  {
    name: "a cord keeps its volume when it is drawn out",
    methods: [sectionByInside],
    source: "Volume of a cylinder, the section sought by halving",
    provenance: "exact-solution",
    run: () => {
      for (const stretch of [-0.02, 0.05, 0.104, 0.2]) {
        const lost = (d: number) => d * d * (1 + stretch) - 1;
        const shrunk = findRoot(lost, { from: 0.5, to: 2, tolerance: 1e-14 });
        assertClose(sectionByInside({ section: 3 * MM, stretch }), shrunk * 3 * MM, 1e-9);
      }
    },
  },
  {
    name: "a torus keeps its volume, within what the estimate inside the formula allows",
    methods: [sectionByVolume],
    source: "Volume of a torus summed in slices, the section sought by Brent's method",
    provenance: "exact-solution",
    run: () => {
      for (
        const [inside, section, groove] of [[7.52, 3.53, 8.3], [9.19, 2.62, 9.75], [
          10.82,
          1.78,
          11.2,
        ], [4.47, 1.78, 5.2]] as const
      ) {
        const volume = torusVolume(inside, section);
        const exact = findRoot((d) => torusVolume(groove, d) - volume, {
          from: section / 2,
          to: section,
          tolerance: 1e-12,
        });
        const found = sectionByVolume({
          section: section * MM,
          insideDiameter: inside * MM,
          groove: groove * MM,
        }) / MM;
        assert(found >= exact - 1e-6, `${found} is meant to lie above ${exact}`);
        assertClose(found, exact, 2e-3, `${inside} x ${section} on ${groove}`);
      }
    },
  },
  {
    name: "the published curve joins at 3 % and runs beside constant volume to 25 %",
    methods: [sectionByCurve],
    source: "Constant volume on the inside diameter",
    provenance: "second-correlation",
    run: () => {
      const loss = (stretch: number) => 1 - sectionByCurve({ section: MM, stretch }) / MM;
      assertClose(loss(0.03), loss(0.03 + 1e-9), 2e-3, "both pieces at 3 %");
      for (let percent = 1; percent <= 25; percent++) {
        const stretch = percent / 100;
        const byVolume = sectionByInside({ section: MM, stretch });
        const byCurve = sectionByCurve({ section: MM, stretch });
        assert(byCurve < byVolume, `${percent} %: more than by constant volume`);
        assertClose(byCurve, byVolume, 0.022, `${percent} %`);
      }
    },
  },
  {
    name: "the published curve at whole steps",
    methods: [sectionByCurve],
    source: "SAE AS4716, appendix A, in percent: R = 0.56 + 0.59 S - 0.0046 S^2 and, to 3 %, " +
      "R = 0.01 + 1.06 S - 0.1 S^2",
    provenance: "formula-evaluated",
    run: () => {
      // deno-fmt-ignore
      const losses = [[1, 0.97], [2, 1.73], [5, 3.395], [10, 6], [15, 8.375], [20, 10.52], [25, 12.435]] as const;
      for (const [percent, lost] of losses) {
        const section = sectionByCurve({ section: MM, stretch: percent / 100 });
        assertClose(100 * (1 - section / MM), lost, 1e-6, `${percent} %`);
      }
    },
  },
  {
    name: "a ring on its groove, measured across",
    methods: [fittedOutside],
    source: "Width of what two circles on either side of the groove cover",
    provenance: "exact-solution",
    run: () => {
      const [groove, section] = [8.3, 3.36];
      const centre = groove / 2 + section / 2;
      const right = [0, 90, 180, 270].map((a) =>
        centre + section / 2 * Math.cos(a * Math.PI / 180)
      );
      const across = 2 * Math.max(...right);
      assertClose(
        fittedOutside({ groove: groove * MM, section: section * MM }),
        across * MM,
        1e-12,
      );
    },
  },
  {
    name: "thick rings lose about what constant volume says, and less than by the curve",
    methods: [sectionByInside, sectionByCurve, sectionByVolume],
    source: "A public program after SAE AS4716, which has a law of its own where the inside is " +
      "below 2.95 sections",
    provenance: "second-correlation",
    run: () => {
      const [inside, section] = [7.52 * MM, 3.53 * MM];
      for (const stretch of [0.05, 0.1, 0.13]) {
        const loss = 100 * stretch / (315 * Math.exp(-inside / section) + 165 + 100 * stretch);
        const left = section * (1 - loss);
        assertClose(sectionByInside({ section, stretch }), left, 2e-3, `${stretch}`);
        const groove = inside * (1 + stretch);
        assert(left < sectionByVolume({ section, insideDiameter: inside, groove }));
        assert(left > sectionByCurve({ section, stretch }));
      }
    },
  },
];
