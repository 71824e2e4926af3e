/** Checks of lib/line: fittings, passages, hose sizes, walls. */
import { assert, assertEquals } from "@std/assert";
import {
  flowAtVelocity,
  meanVelocity,
  minorLoss,
  pipePressureDrop,
  reynoldsNumber,
} from "@/lib/flow/mod.ts";
import {
  CORRUGATED_FRICTION,
  fittingLossCoefficient,
  FITTINGS,
  hoseBore,
  type HoseFamily,
  narrowPassage,
  ROUGHNESS_M,
} from "@/lib/line/mod.ts";
import { assertClose } from "../../helpers/assert_close.ts";
import {
  type Answer,
  type Answers,
  type Check,
  fromReference,
  type ReferenceCase,
} from "../../helpers/checks.ts";

const OF_THREAD = { later: "answered in tests/lib/thread: ports, flares and tubes" };

const hoses: Answers = {
  "hose inside diameter, ordinary SAE J517 family*": hoseAnswer("inside"),
  "hose inside diameter, tube-OD-sized family*": hoseAnswer("tube"),
  "mean velocity in the hose": {
    methods: [meanVelocity],
    run: (i) => ({
      velocity_m_s: meanVelocity({ flow: i.flow_L_per_min / 60e3, bore: i.id_mm / 1000 }),
    }),
  },
  "tube bore from OD and wall": OF_THREAD,
  "straight-thread O-ring port (inch)": OF_THREAD,
  "O-ring*": OF_THREAD,
  "gap check*": OF_THREAD,
  "metric O-ring port": OF_THREAD,
  "working-pressure scope of the port standard": OF_THREAD,
  "37-degree flare size": OF_THREAD,
  "through-bore of the flare connector": OF_THREAD,
  "37 and 45 degree flares do not mix": OF_THREAD,
};

/** Hooper's elbow of minor-losses.json: 90 degrees, screwed, 10 mm; K by Reynolds number. */
const HOOPER_ELBOW = casesOf("minor-losses.json", "K elbow at low Reynolds number");
const HOOPER_SOURCE = "W. B. Hooper, Chem. Eng. 88(17) (1981) 96, by fluids 1.0.22";

/** Checks of lib/line. */
export const checks: Check[] = [
  ...fromReference("ports-hoses.json", hoses),
  {
    name: "loss of a fitting is Hooper's where its turbulent coefficient is his",
    methods: [fittingLossCoefficient],
    source: `${HOOPER_SOURCE}: minor-losses.json D-2K-1 and D-2K-2`,
    provenance: "computed-with-library",
    run: () => {
      assertEquals(HOOPER_ELBOW.length, 2);
      for (const { inputs, expected } of HOOPER_ELBOW) {
        const loss = fittingLossCoefficient({
          laminar: inputs.K1,
          turbulent: inputs.K_inf * (1 + 25.4e-3 / inputs.bore_m),
          reynolds: inputs.reynolds,
        });
        assertClose(loss, (expected as { K: number }).K, 1e-6);
      }
    },
  },
  {
    name:
      "right angles at Re 500 and 5000 lie about Hooper's screwed elbow: swept below, forged near",
    methods: [fittingLossCoefficient],
    source: `${HOOPER_SOURCE}: 3.016 and 1.576; swept and sharp corners differ from it in turn`,
    provenance: "second-correlation",
    run: () => {
      for (const { inputs: { reynolds }, expected } of HOOPER_ELBOW) {
        const screwed = (expected as { K: number }).K;
        const swept = fittingLossCoefficient({ ...FITTINGS["elbow-90-swept"], reynolds });
        const forged = fittingLossCoefficient({ ...FITTINGS["elbow-90-forged"], reynolds });
        assert(swept < screwed && swept > 0.3 * screwed, `swept ${swept} at Re ${reynolds}`);
        assertClose(forged, screwed, 0.15, `forged at Re ${reynolds}`);
      }
    },
  },
  {
    name: "loss of every fitting ends at its turbulent coefficient and falls with Re",
    methods: [fittingLossCoefficient],
    source: "The limit of the form: 1 / Re vanishes",
    provenance: "exact-solution",
    run: () => {
      for (const fitting of Object.values(FITTINGS)) {
        const at = (reynolds: number) => fittingLossCoefficient({ ...fitting, reynolds });
        assert(Math.abs(at(1e9) - fitting.turbulent) < 1e-5);
        assert(at(500) >= at(5000) && at(5000) >= at(5e5));
      }
    },
  },
  {
    name: "a barb into a wider port loses what the library's parts add up to",
    methods: [],
    source:
      "fluids 1.0.22, fittings.contraction_sharp and diffuser_sharp: minor-losses.json D-BARB-1",
    provenance: "computed-with-library",
    run: () => {
      const [barb] = casesOf("minor-losses.json", "K of a hose-barb step bore");
      assert(barb);
      const { inputs: i, expected } = barb;
      const { turbulent } = narrowPassage({
        boreRatio: i.barb_bore_m / i.hose_bore_m,
        lengthRatio: i.barb_length_m / i.hose_bore_m,
        outletRatio: i.port_bore_m / i.hose_bore_m,
        frictionFactor: i.darcy_friction_factor,
      });
      assertClose(turbulent, (expected as { K_total_on_hose: number }).K_total_on_hose, 1e-6);
    },
  },
  {
    name: "a passage as wide as the hose loses what that length of hose does in laminar flow",
    methods: [minorLoss, pipePressureDrop],
    source: "Hagen-Poiseuille, exact: 128 mu L Q / (pi d^4)",
    provenance: "exact-solution",
    run: () => {
      const [bore, length, viscosity, density] = [8e-3, 24e-3, 1.2e-3, 790];
      const velocity = 0.1;
      const { laminar } = narrowPassage({
        boreRatio: 1,
        lengthRatio: length / bore,
        outletRatio: 1,
        frictionFactor: 0.03,
      });
      const reynolds = reynoldsNumber({ density, velocity, bore, viscosity });
      const loss = minorLoss({ lossCoefficient: laminar / reynolds, density, velocity });
      const flow = flowAtVelocity({ velocity, bore });
      assertClose(loss, 128 * viscosity * length * flow / (Math.PI * bore ** 4), 1e-12);
    },
  },
  {
    name: "laminar friction of a narrow passage is that of a tube of its bore",
    methods: [minorLoss],
    source: "Hagen-Poiseuille, exact; the rest is Hooper's 160 (beta^-4 - 1) of a contraction",
    provenance: "exact-solution",
    run: () => {
      const [hose, narrow, length, viscosity, density] = [8e-3, 6e-3, 16e-3, 1.2e-3, 790];
      const shape = { boreRatio: narrow / hose, outletRatio: 1, frictionFactor: 0.03 };
      // What the length adds, whatever the steps take.
      const laminar = narrowPassage({ ...shape, lengthRatio: length / hose }).laminar -
        narrowPassage({ ...shape, lengthRatio: 0 }).laminar;
      const velocity = 0.1;
      const reynolds = reynoldsNumber({ density, velocity, bore: hose, viscosity });
      const loss = minorLoss({ lossCoefficient: laminar / reynolds, density, velocity });
      const flow = flowAtVelocity({ velocity, bore: hose });
      assertClose(loss, 128 * viscosity * length * flow / (Math.PI * narrow ** 4), 1e-12);
    },
  },
  {
    name: "what a narrow passage's steps lose at 1 / Re is a laminar contraction's part of it",
    methods: [],
    source: "W. B. Hooper, Chem. Eng. 95(16) (1988) 89: (1.2 + 160 / Re) ((D1 / D2)^4 - 1), " +
      "read in lecture notes and open programs",
    provenance: "read-from-source",
    run: () => {
      const hooper = (reynolds: number) => (1.2 + 160 / reynolds) * ((16 / 12) ** 4 - 1);
      const shape = { boreRatio: 12 / 16, lengthRatio: 0, outletRatio: 1, frictionFactor: 0.03 };
      const { laminar } = narrowPassage(shape);
      assertClose(laminar / 100 - laminar / 200, hooper(100) - hooper(200), 1e-12);
    },
  },
  {
    name: "turns, tees and barbs lie in handbooks' ranges",
    methods: [],
    source: "Handbook ranges: swept 90 degrees 0.3 to 0.35, sharp corner 1.1 to 1.35 (45 degrees " +
      "0.30 to 0.34), tee branch 60 f_T of Crane within 20 %, run 0.4 to 0.9 (1/2 in threaded)",
    provenance: "from-memory",
    run: () => {
      const ranges: [kind: keyof typeof FITTINGS, least: number, most: number][] = [
        ["elbow-45-swept", 0.15, 0.3],
        ["elbow-90-swept", 0.3, 0.35],
        ["elbow-180-swept", 0.35, 0.7],
        ["elbow-45-forged", 0.3, 0.34],
        ["elbow-90-forged", 1.1, 1.35],
        ["elbow-180-forged", 2.2, 2.7],
        ["tee-run", 0.4, 0.9],
        ["tee-branch", 60 * 0.03 * 0.8, 60 * 0.03 * 1.2],
        ["reducer", 0, 0],
      ];
      for (const [kind, least, most] of ranges) {
        const { turbulent } = FITTINGS[kind];
        assert(turbulent >= least && turbulent <= most, `${kind}: ${turbulent}`);
      }
    },
  },
  {
    name: "a barb costs more than a nipple, a longer passage more than a shorter one",
    methods: [],
    source: "Continuity and friction",
    provenance: "exact-solution",
    run: () => {
      const { straight, adapter, bulkhead, barb } = FITTINGS;
      assertEquals(adapter.turbulent, straight.turbulent);
      for (const part of ["laminar", "turbulent"] as const) {
        assert(barb[part] > bulkhead[part] && bulkhead[part] > adapter[part]);
      }
      // Above Crane's gentler contraction with Borda's expansion, as friction comes on top.
      const steps = (0.5 * (1 - 0.85 ** 2) + (1 - 0.85 ** 2) ** 2) / 0.85 ** 4;
      assert(straight.turbulent > steps && straight.turbulent < 2 * steps);
    },
  },
  {
    name: "hose of the motorsport trade lies between the tube's and the full sixteenths",
    methods: [],
    source: "Fractions of an inch that the trade names: 7/32, 11/32, 7/16, 9/16, 11/16",
    provenance: "from-memory",
    run: () => {
      const named = [["-4", 7 / 32], ["-6", 11 / 32], ["-8", 7 / 16], ["-10", 9 / 16], [
        "-12",
        11 / 16,
      ]] as const;
      for (const [dash, inches] of named) {
        const bore = hoseBore("motorsport", dash) ?? NaN;
        assertClose(bore, inches * 25.4e-3, 0.01, dash);
        assert(bore > (hoseBore("tube", dash) ?? NaN) && bore < (hoseBore("inside", dash) ?? NaN));
      }
      assertEquals(hoseBore("motorsport", "-16"), undefined);
    },
  },
  {
    name: "tubes of 100R5 are as wide as 1/2 in at -10",
    methods: [],
    source: "SAE J517 100R5: -10 is 1/2 in inside",
    provenance: "from-memory",
    run: () => assertEquals(hoseBore("tube", "-10"), 12.7e-3),
  },
  {
    name: "walls are as rough as the reference lines take them",
    methods: [],
    source: "line-pressure-drop.json E-L-01 (drawn tube) and E-L-07 (rubber hose)",
    provenance: "from-memory",
    run: () => {
      const lines = casesOf("line-pressure-drop.json", "pressure drop of a line");
      const roughness = (id: string): number =>
        lines.find((c) => c.id === id)?.inputs.segments[0].roughness_m;
      assertEquals(ROUGHNESS_M.tube, roughness("E-L-01"));
      assertEquals(ROUGHNESS_M.hose, roughness("E-L-07"));
      assert(ROUGHNESS_M.liner <= ROUGHNESS_M.tube);
    },
  },
  {
    name: "corrugated hose is planned with at least twice the friction",
    methods: [],
    source: "Bulletin on corrugated metal hose: almost 100 % more than steel pipe",
    provenance: "read-from-source",
    run: () => assert(CORRUGATED_FRICTION >= 2 && CORRUGATED_FRICTION <= 3),
  },
];

function hoseAnswer(family: HoseFamily): Answer {
  return {
    methods: [],
    run: ({ dash }) => {
      const size = (["-4", "-6", "-8", "-10", "-12", "-16"] as const).find((d) => d === `${dash}`);
      const bore_m = size && hoseBore(family, size);
      return { id_mm: bore_m === undefined ? undefined : bore_m * 1000 };
    },
  };
}

function casesOf(file: string, quantity: string): ReferenceCase[] {
  const url = new URL(`../../reference/${file}`, import.meta.url);
  const cases: ReferenceCase[] = JSON.parse(Deno.readTextFileSync(url));
  return cases.filter((c) => c.quantity.startsWith(quantity));
}
