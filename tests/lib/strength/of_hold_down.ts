/** Answers to the reference cases of hold-downs, and checks of what holds a rail down. */
import { assert, assertEquals } from "@std/assert";
import { railPressure } from "@/lib/injector/mod.ts";
import { absoluteFromGauge } from "@/lib/supply/mod.ts";
import {
  barDeflection,
  bendingStress,
  boredRectangleInertia,
  boredRoundInertia,
  clampForFactor,
  clampLeft,
  decidingPull,
  heldBar,
  holdMargin,
  type Lift,
  preloadFactor,
  pressureForce,
  screwShare,
  separationFactor,
  shareOfStiffBar,
  springForce,
  tightenedScrewLoad,
} from "@/lib/strength/mod.ts";
import { assertClose } from "../../helpers/assert_close.ts";
import type { Answer, Answers, Check } from "../../helpers/checks.ts";
import { Seeded } from "../../helpers/seeded.ts";
import { beamOnSprings } from "./beam_elements.ts";

const MM = 1e-3;
const MPA = 1e6;
const BAR = 1e5;

const liftOf = (pocket_mm: number, pressure_MPa: number): number =>
  pressureForce({ pressure: pressure_MPa * MPA, diameter: pocket_mm * MM });

/** Pulls of a bar that doesn't bend [N]. */
function stiffBar(screws: readonly number[], lifts: readonly Lift[]): number[] {
  const middle = screws.reduce((sum, x) => sum + x, 0) / screws.length;
  return screws.map((x) =>
    shareOfStiffBar({
      lift: lifts.reduce((sum, { force_N }) => sum + force_N, 0),
      screws: screws.length,
      moment: lifts.reduce((sum, { x_m, force_N }) => sum + force_N * (x_m - middle), 0),
      offset: x - middle,
      spread: screws.reduce((sum, other) => sum + (other - middle) ** 2, 0),
    })
  );
}

/** Lifts and screws spaced evenly, so that each screw holds as much. */
function shared({ injectors, pocket_dia_mm, pressure_MPa, screws, factor }: Record<
  "injectors" | "pocket_dia_mm" | "pressure_MPa" | "screws" | "factor",
  number
>) {
  const each = liftOf(pocket_dia_mm, pressure_MPa);
  const even = (count: number) => Array.from({ length: count }, (_, i) => (i + 0.5) / count);
  const lifts = even(injectors).map((x_m): Lift => ({ x_m, force_N: each }));
  const pulls = stiffBar(even(screws), lifts);
  const pull = Math.max(...pulls);
  assertClose(Math.min(...pulls), pull, 1e-9, "equal shares");
  return {
    total_N: pulls.reduce((sum, p) => sum + p, 0),
    per_screw_N: pull,
    required_clamp_per_screw_N: clampForFactor({ pull, factor }),
  };
}

const gaugeOfRail: Answer = {
  methods: [railPressure],
  run: (i) => ({
    rail_gauge_bar: railPressure({
      setPressure: i.base_differential_bar * BAR,
      reference: 1,
      manifold: (1 + (i.boost_gauge_bar ?? i.manifold_gauge_bar)) * BAR,
      ambient: BAR,
    }) / BAR,
  }),
};

/** What becomes of hold-down.json. */
export const holdDownAnswers: Answers = {
  "hydraulic lift of one injector on the rail": {
    methods: [pressureForce],
    run: (i) => {
      const force_N = liftOf(i.pocket_dia_mm, i.pressure_gauge_MPa);
      return { area_mm2: force_N / i.pressure_gauge_MPa, force_N };
    },
  },
  "rail separation force and clamp load per screw": {
    methods: [pressureForce, shareOfStiffBar, clampForFactor],
    run: shared,
  },
  "two hold-down points: reactions by moments (rail as a rigid beam)": {
    methods: [shareOfStiffBar],
    run: (
      i: Record<"screw_x_mm" | "injector_x_mm", readonly number[]> & {
        readonly lift_each_N: number;
      },
    ) => {
      const screws = i.screw_x_mm.map((x) => x * MM);
      const lifts = i.injector_x_mm.map((x): Lift => ({ x_m: x * MM, force_N: i.lift_each_N }));
      const [reaction_first_N = NaN, reaction_second_N = NaN] = stiffBar(screws, lifts);
      const bent = heldBar(screws, lifts); // the same by a bar that bends
      for (const pulls of [bent.pulls_N, bent.pullsLeast_N, bent.pullsMost_N]) {
        assertClose(pulls[0] ?? NaN, reaction_first_N, 1e-9);
        assertClose(pulls[1] ?? NaN, reaction_second_N, 1e-9);
      }
      return { reaction_first_N, reaction_second_N };
    },
  },
  "rail bending between two screws under one central lift force": {
    methods: [boredRectangleInertia, bendingStress, barDeflection],
    run: (i) => {
      const span = i.span_mm * MM;
      const bar = heldBar([0, span], [{ x_m: span / 2, force_N: i.force_N }]);
      const inertia = boredRectangleInertia({
        width: i.width_mm * MM,
        height: i.height_mm * MM,
        bore: i.bore_mm * MM,
      });
      return {
        I_mm4: inertia / MM ** 4,
        stress_MPa: bendingStress({ moment: bar.moment_Nm, depth: i.height_mm * MM, inertia }) /
          MPA,
        deflection_mm: barDeflection({
          flexure: bar.gaps[0]?.flexure_N_m3 ?? NaN,
          elasticModulus: i.E_MPa * MPA,
          inertia,
        }) / MM,
      };
    },
  },
  "preloaded joint: screw load, residual clamp, load factor to separation": {
    methods: [screwShare, tightenedScrewLoad, clampLeft, separationFactor],
    run: (i) => {
      const share = screwShare({
        stiffnessRatio: i.member_stiffness_rel / i.screw_stiffness_rel,
      });
      const joint = { preload: i.preload_N, share, pull: i.external_N };
      return {
        C: share,
        screw_load_N: tightenedScrewLoad(joint),
        clamp_N: clampLeft(joint),
        separation_factor: separationFactor(joint),
      };
    },
  },
  "spring-held injector: does the spring hold?": {
    methods: [springForce, pressureForce, holdMargin],
    run: (i) => {
      const spring_N = springForce({
        rate: i.rate_N_mm / MM,
        compression: i.compression_mm * MM,
      });
      const lift_N = liftOf(i.pocket_dia_mm, i.pressure_MPa);
      const margin = holdMargin({ holding: spring_N, lift: lift_N });
      return { spring_N, lift_N, holds: margin > 1, margin };
    },
  },
  "which pressure acts": {
    methods: [absoluteFromGauge],
    // The gauge pressure that comes to the absolute one in that air.
    run: (i) => {
      const ambient = i.ambient_abs_MPa * MPA;
      const gauge = i.rail_abs_MPa * MPA - ambient;
      assertClose(absoluteFromGauge({ gauge, ambient }), i.rail_abs_MPa * MPA, 1e-12);
      return { effective_gauge_MPa: gauge / MPA };
    },
  },
  "rail gauge pressure with 1:1 manifold reference": gaugeOfRail,
  "rail gauge pressure at idle vacuum": gaugeOfRail,
  "lift during the proof test": {
    methods: [pressureForce],
    run: (i) => {
      const each_N = liftOf(i.pocket_dia_mm, i.test_pressure_MPa);
      return { each_N, total_N: each_N * i.injectors };
    },
  },
};

/** E I of a bored bar of 25 mm [N m^2]; any would do. */
const STIFFNESS = 2157;
const UNYIELDING = 1e13;

/** Rails by chance: injectors at an even pitch, screws anywhere. */
function* rails(count: number): Generator<{ screws: number[]; lifts: Lift[] }> {
  const random = new Seeded(4);
  for (let i = 0; i < count; i++) {
    const injectors = 1 + Math.floor(random.next() * 6);
    const pitch = random.between(0.07, 0.12);
    const lifts = Array.from({ length: injectors }, (_, k): Lift => ({
      x_m: 0.02 + k * pitch,
      force_N: random.between(20, 200),
    }));
    const number = 2 + Math.floor(random.next() * 5);
    const screws = [random.between(0, pitch)];
    while (screws.length < number) {
      screws.push(
        (screws.at(-1) ?? 0) + 0.04 + random.next() * injectors * pitch / number,
      );
    }
    yield { screws, lifts };
  }
}

const total = (lifts: readonly Lift[]): number =>
  lifts.reduce((sum, { force_N }) => sum + force_N, 0);

/** Second moment about the middle by strips, with the width left at each height. */
function byStrips(height: number, widthAt: (y: number) => number): number {
  const strips = 200_000;
  let sum = 0;
  for (let i = 0; i < strips; i++) {
    const y = ((i + 0.5) / strips - 0.5) * height;
    sum += widthAt(y) * y * y * height / strips;
  }
  return sum;
}

const chord = (diameter: number, y: number): number =>
  2 * Math.sqrt(Math.max(0, (diameter / 2) ** 2 - y ** 2));

/** Checks by hand. */
export const holdDownChecks: readonly Check[] = [
  {
    name: "a stiff bar: forces and moments in balance, and the least energy in the screws",
    methods: [shareOfStiffBar],
    source: "Statics; least squares over all pulls that balance",
    provenance: "exact-solution",
    run: () => {
      for (const { screws, lifts } of rails(40)) {
        const pulls = stiffBar(screws, lifts);
        const whole = total(lifts);
        assertClose(pulls.reduce((s, p) => s + p, 0), whole, 1e-9, "force");
        const about = lifts.reduce((s, l) => s + l.force_N * l.x_m, 0);
        assertClose(
          pulls.reduce((s, p, i) => s + p * (screws[i] ?? NaN), 0),
          about,
          1e-9,
          "moment",
        );
        if (screws.length < 3) continue;
        // A change of three pulls that keeps the balance never lowers the energy.
        const [a = 0, b = 0, c = 0] = screws;
        const change = [c - b, a - c, b - a];
        const energy = (by: number) =>
          pulls.reduce((s, p, i) => s + (p + by * (change[i] ?? 0)) ** 2, 0);
        assert(energy(1) > energy(0) && energy(-1) > energy(0));
      }
    },
  },
  {
    name: "a bar that bends, by beam elements on very stiff springs",
    methods: [barDeflection],
    source: "Hermite's beam elements, exact for forces at their nodes",
    provenance: "second-correlation",
    run: () => {
      for (const { screws, lifts } of rails(120)) {
        const held = heldBar(screws, lifts);
        const middles = held.gaps.map(({ from_m, to_m }) => (from_m + to_m) / 2);
        const other = beamOnSprings(screws, lifts, STIFFNESS, UNYIELDING, middles);
        held.pulls_N.forEach((pull, i) => {
          assert(Math.abs(pull - (other.pulls[i] ?? NaN)) < 1e-3 * total(lifts), `screw ${i}`);
        });
        assertClose(held.moment_Nm, other.moment, 1e-3, "moment");
        const [first = NaN, last = NaN] = [screws[0], screws.at(-1)];
        for (const { from_m, to_m, flexure_N_m3 } of held.gaps) {
          const places = lifts.map(({ x_m }) => x_m).filter((x) => x >= from_m && x <= to_m);
          if (from_m >= first && to_m <= last) places.push((from_m + to_m) / 2);
          const most = Math.max(...places.map((x) => Math.abs(other.at(x))));
          // With E = 1 Pa and I = E I the method gives the deflection of that bar.
          const found = barDeflection({
            flexure: flexure_N_m3,
            elasticModulus: 69e9,
            inertia: STIFFNESS / 69e9,
          });
          assert(Math.abs(found - most) <= 2e-3 * most + 1e-9, `${from_m}: ${found}, ${most}`);
        }
      }
    },
  },
  {
    name: "no stands, however yielding, ask more of a screw than it is judged by",
    methods: [decidingPull, shareOfStiffBar],
    source: "Hermite's beam elements on springs from far softer to far stiffer than the bar",
    provenance: "second-correlation",
    run: () => {
      for (const { screws, lifts } of rails(40)) {
        const held = heldBar(screws, lifts);
        const stiff = stiffBar(screws, lifts);
        const judged = screws.map((_, i) =>
          decidingPull({ stiffBar: stiff[i] ?? NaN, bendingBar: held.pullsMost_N[i] ?? NaN })
        );
        const least = screws.map((_, i) => Math.min(stiff[i] ?? NaN, held.pullsLeast_N[i] ?? NaN));
        const highest = screws.map(() => -Infinity);
        const length = (screws.at(-1) ?? NaN) - (screws[0] ?? NaN);
        // Quarters of decades are where heldBar() looks; thirds fall between.
        for (const [step, slack] of [[1 / 4, 1e-4], [1 / 3, 6e-3]] as const) {
          for (let power = -5; power <= 1; power += step) {
            const spring = STIFFNESS / (10 ** power * length ** 3);
            beamOnSprings(screws, lifts, STIFFNESS, spring).pulls.forEach((pull, i) => {
              const margin = slack * total(lifts);
              assert(pull <= (judged[i] ?? NaN) + margin, `${pull} over ${judged[i]}`);
              assert(pull >= (least[i] ?? NaN) - margin, `${pull} under ${least[i]}`);
              highest[i] = Math.max(highest[i] ?? NaN, pull);
            });
          }
        }
        const unyielding = beamOnSprings(screws, lifts, STIFFNESS, UNYIELDING).pulls;
        const bendless = beamOnSprings(screws, lifts, STIFFNESS, 100).pulls;
        [unyielding, bendless].forEach((pulls) =>
          pulls.forEach((pull, i) => highest[i] = Math.max(highest[i] ?? NaN, pull))
        );
        // Nor is a screw judged by more than some stands ask.
        judged.forEach((pull, i) =>
          assert(pull <= (highest[i] ?? NaN) + 0.01 * total(lifts), `${pull} over ${highest[i]}`)
        );
      }
    },
  },
  {
    name: "two equal gaps, a lift in each middle: 5/16, 11/8 and 5/16 of it, moment 3/16 F L",
    methods: [barDeflection],
    source: "M. R. Lindeburg, Civil Engineering Reference Manual, continuous beams, as printed",
    provenance: "read-from-source",
    run: () => {
      const lifts = [0.1, 0.3].map((x_m): Lift => ({ x_m, force_N: 160 }));
      const { pulls_N, moment_Nm, gaps } = heldBar([0, 0.2, 0.4], lifts);
      pulls_N.forEach((pull, i) => assertClose(pull, [50, 220, 50][i] ?? NaN, 1e-9));
      assertClose(moment_Nm, 3 / 16 * 160 * 0.2, 1e-9);
      // Under the lift 7/768 F L^3 / (E I), from memory.
      const inertia = 3e-8;
      const found = barDeflection({
        flexure: gaps[0]?.flexure_N_m3 ?? NaN,
        elasticModulus: 69e9,
        inertia,
      });
      assertClose(found, 7 / 768 * 160 * 0.2 ** 3 / (69e9 * inertia), 1e-9);
    },
  },
  {
    name: "two equal gaps, one lift anywhere",
    methods: [],
    source:
      "Printed table of beam formulas: two-span continuous beam, R1 = P b (4 L^2 - a (L + a)) / 4 L^3",
    provenance: "read-from-source",
    run: () => {
      for (const a of [0.03, 0.08, 0.15]) {
        const [L, b] = [0.2, 0.2 - a];
        const { pulls_N } = heldBar([0, L, 2 * L], [{ x_m: a, force_N: 100 }]);
        const expected = [
          100 * b / (4 * L ** 3) * (4 * L ** 2 - a * (L + a)),
          100 * a / (2 * L ** 3) * (2 * L ** 2 + b * (L + a)),
          -100 * a * b / (4 * L ** 3) * (L + a),
        ];
        pulls_N.forEach((pull, i) => assertClose(pull, expected[i] ?? NaN, 1e-9));
      }
    },
  },
  {
    name: "three equal gaps evenly lifted: 0.4, 1.1, 1.1, 0.4 w L, moment w L^2 / 10, 0.0069 w L^4",
    methods: [barDeflection],
    source: "Printed table of beam formulas: three-span continuous beam, load spread evenly",
    provenance: "read-from-source",
    run: () => {
      const [L, many] = [0.2, 3000];
      const lifts = Array.from({ length: many }, (_, i): Lift => ({
        x_m: (i + 0.5) / many * 3 * L,
        force_N: 3 / many,
      }));
      const { pulls_N, moment_Nm, gaps } = heldBar([0, L, 2 * L, 3 * L], lifts);
      pulls_N.forEach((pull, i) => assertClose(pull, [0.4, 1.1, 1.1, 0.4][i] ?? NaN, 1e-3));
      assertClose(moment_Nm, L / 10, 2e-3);
      assertClose(
        barDeflection({
          flexure: gaps[0]?.flexure_N_m3 ?? NaN,
          elasticModulus: 1e9,
          inertia: 1e-8,
        }),
        0.0069 * L ** 3 / 10,
        0.01,
      );
    },
  },
  {
    name: "second moments by strips",
    methods: [boredRectangleInertia, boredRoundInertia],
    source: "Strips of the section added up",
    provenance: "exact-solution",
    run: () => {
      const bar = { width: 0.03, height: 0.022, bore: 0.0127 };
      assertClose(
        boredRectangleInertia(bar),
        byStrips(bar.height, (y) => bar.width - chord(bar.bore, y)),
        1e-6,
      );
      assertClose(
        boredRoundInertia({ outside: 0.025, bore: 0.0127 }),
        byStrips(0.025, (y) => chord(0.025, y) - chord(0.0127, y)),
        1e-6,
      );
    },
  },
  {
    name: "stress of bending, added up over the section, holds the moment",
    methods: [bendingStress],
    source: "Balance of moments on a cut",
    provenance: "exact-solution",
    run: () => {
      const [width, height, moment] = [0.02, 0.025, 7];
      const inertia = byStrips(height, () => width);
      const outside = bendingStress({ moment, depth: height, inertia });
      // Stress grows evenly from nought in the middle, so its moment is that of y^2.
      const held = outside / (height / 2) * byStrips(height, () => width);
      assertClose(held, moment, 1e-9);
      assertClose(outside, 6 * moment / (width * height ** 2), 1e-6); // W = b h^2 / 6, handbooks
    },
  },
  {
    name: "a tightened joint as two springs that stretch alike",
    methods: [screwShare, tightenedScrewLoad, clampLeft, separationFactor],
    source: "Hooke's law for screw and clamped parts, solved step by step",
    provenance: "exact-solution",
    run: () => {
      for (
        const [screw, clamped, preload, pull] of [[2, 6, 5000, 700], [1, 1, 900, 400]] as const
      ) {
        // Screw stretched, parts squeezed by the preload; both move by the same under the pull.
        const move = (under: number) => under / (screw + clamped);
        const joint = { preload, share: screwShare({ stiffnessRatio: clamped / screw }), pull };
        assertClose(tightenedScrewLoad(joint), preload + screw * move(pull), 1e-12);
        assertClose(clampLeft(joint), preload - clamped * move(pull), 1e-12);
        const opens = separationFactor(joint) * pull;
        assert(Math.abs(preload - clamped * move(opens)) < 1e-9 * preload);
      }
    },
  },
  {
    name: "three times the screw's stiffness: a quarter of the pull",
    methods: [screwShare],
    source:
      "Published notes on bolted joints: clamped parts usually taken three times as stiff, C = 1/4",
    provenance: "read-from-source",
    run: () => assertEquals(screwShare({ stiffnessRatio: 3 }), 0.25),
  },
  {
    name: "preload for a factor has that factor",
    methods: [clampForFactor, preloadFactor],
    source: "The same ratio both ways",
    provenance: "exact-solution",
    run: () => {
      for (const [pull, factor] of [[123.15, 3], [308, 2]] as const) {
        assertClose(
          preloadFactor({ preload: clampForFactor({ pull, factor }), pull }),
          factor,
          1e-12,
        );
        // By trial: the least whole newton that does.
        let preload = 0;
        while (preload / pull < factor) preload++;
        assert(Math.abs(clampForFactor({ pull, factor }) - preload) <= 1);
      }
    },
  },
  {
    name: "a spring that just balances the lift has a margin of 1",
    methods: [springForce, holdMargin],
    source: "Work of pressing the spring, added up; balance of forces",
    provenance: "exact-solution",
    run: () => {
      const rate = 12_000;
      const work = (to: number): number => {
        let sum = 0;
        for (let i = 0; i < 1000; i++) {
          sum += springForce({ rate, compression: (i + 0.5) / 1000 * to }) * to / 1000;
        }
        return sum;
      };
      assertClose(work(0.006), rate * 0.006 ** 2 / 2, 1e-9);
      const lift = liftOf(14, 0.4);
      const compression = lift / rate;
      assertClose(holdMargin({ holding: springForce({ rate, compression }), lift }), 1, 1e-12);
    },
  },
];
