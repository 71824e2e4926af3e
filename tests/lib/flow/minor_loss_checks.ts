/** Checks of minor losses: fittings, steps, bends, tees, stated losses. */
import { assert } from "@std/assert";
import {
  bendLoss,
  bevelledEntrance,
  colebrookFriction,
  conicalContraction,
  conicalContractionCrane,
  conicalExpansion,
  conicalExpansionCrane,
  cornerLoss,
  cornerLossCrane,
  dynamicPressure,
  equivalentLengthLoss,
  EXIT_LOSS,
  FITTING_LENGTHS,
  flowAtLoss,
  hydrostaticPressure,
  laminarFriction,
  lossCoefficientOf,
  lossReferredTo,
  meanVelocity,
  minorLoss,
  orificeFlow,
  pipePressureDrop,
  projectingEntrance,
  reynoldsNumber,
  roughPipeFriction,
  roundedEntrance,
  roundedEntranceCrane,
  SHARP_ENTRANCE,
  statedLoss,
  STEEL_PIPE_ROUGHNESS_m,
  suddenContraction,
  suddenContractionCrane,
  suddenExpansion,
  teeBranchLoss,
  teeRunLoss,
  twoKLoss,
  wyeBranchLoss,
} from "@/lib/flow/mod.ts";
import { takeOffLoss } from "@/lib/rail/mod.ts";
import { assertClose } from "../../helpers/assert_close.ts";
import { type Answers, type Check, fromReference } from "../../helpers/checks.ts";

const IDELCHIK_TABLE = "Idelchik's is a printed table, read through a spline by the library";

/** Water as flow coefficients are stated with, and what they are stated in. */
const KV = { differential: 1e5, density: 1000 };
const CV = { differential: 6894.757293168, density: 1000 };
const US_GALLON_m3 = 3.785411784e-3;

const expansion = {
  methods: [suddenExpansion],
  run: (i: Steps) => ({ K: suddenExpansion({ boreRatio: ratio(i) }) }),
};

const minorLosses: Answers = {
  "K sharp flush entrance (based on pipe velocity)": {
    methods: [],
    run: () => ({
      K_rennels: SHARP_ENTRANCE.rennels,
      K_crane: SHARP_ENTRANCE.crane,
      K_idelchik: SHARP_ENTRANCE.idelchik,
    }),
  },
  "K inward-projecting (Borda) entrance, thin pipe": {
    methods: [projectingEntrance],
    // The wall and the bore stand in the source's words, not among the inputs.
    run: () => ({ K: projectingEntrance({ wallRatio: 0.0001 / 0.01 }) }),
  },
  "K rounded entrance": {
    methods: [roundedEntrance, roundedEntranceCrane],
    run: (i) => {
      const radiusRatio = i.rounding_radius_m / i.bore_m;
      return {
        K_rennels: roundedEntrance({ radiusRatio }),
        K_crane: roundedEntranceCrane({ radiusRatio }),
      };
    },
    leaves: { K_idelchik: IDELCHIK_TABLE },
  },
  "K bevelled (chamfered) entrance": {
    methods: [bevelledEntrance],
    run: (i) => ({
      K_rennels: bevelledEntrance({
        lengthRatio: i.chamfer_length_m / i.bore_m,
        angle: i.chamfer_angle_to_axis_rad,
      }),
    }),
    leaves: { K_idelchik: IDELCHIK_TABLE },
  },
  "K exit into a large volume": { methods: [], run: () => ({ K: EXIT_LOSS }) },
  "K sudden contraction (based on smaller bore)": {
    methods: [suddenContraction, suddenContractionCrane],
    run: (i) => ({
      K_rennels: suddenContraction({ boreRatio: ratio(i) }),
      K_crane_half_1_minus_beta2: suddenContractionCrane({ boreRatio: ratio(i) }),
    }),
  },
  "K sudden expansion (based on smaller bore), Borda-Carnot": expansion,
  "loss of a line discharging axially into a rail gallery*": expansion,
  "K conical diffuser (based on smaller bore)": {
    methods: [conicalExpansion, conicalExpansionCrane],
    run: (i) => ({ K_rennels: conicalExpansion(cone(i)), K_crane: conicalExpansionCrane(cone(i)) }),
  },
  "K conical contraction (based on smaller bore)": {
    methods: [conicalContraction, conicalContractionCrane],
    run: (i) => ({
      K_rennels: conicalContraction(cone(i)),
      K_crane: conicalContractionCrane(cone(i)),
    }),
  },
  "K smooth bend": {
    methods: [bendLoss],
    run: (i) => ({
      K_rennels: bendLoss({
        turnAngle: i.turn_angle_rad,
        radiusRatio: i.bend_radius_to_bore,
        frictionFactor: i.darcy_friction_factor,
      }),
    }),
  },
  "K sharp mitre elbow": {
    methods: [cornerLoss, cornerLossCrane],
    run: ({ turn_angle_rad }) => {
      // A right angle written with ten digits lies a little beyond one.
      const turnAngle = Math.min(Math.PI / 2, turn_angle_rad);
      return {
        K_rennels: cornerLoss({ turnAngle }),
        K_crane_turbulent_d25mm: cornerLossCrane({
          turnAngle,
          frictionFactor: libraryFriction(0.025),
        }),
      };
    },
  },
  "Crane fully turbulent friction factor for clean commercial steel pipe": {
    methods: [],
    // The library's own fit, so that ours can be held against it below.
    run: ({ bore_m }) => ({ f_T: libraryFriction(bore_m) }),
  },
  "Crane standard threaded elbows, K = 30 f_T and 16 f_T": {
    methods: [equivalentLengthLoss],
    run: ({ f_T: frictionFactor }) => ({
      K_90: equivalentLengthLoss({ lengthRatio: FITTING_LENGTHS["elbow-90"], frictionFactor }),
      K_45: equivalentLengthLoss({ lengthRatio: FITTING_LENGTHS["elbow-45"], frictionFactor }),
    }),
  },
  "K elbow at low Reynolds number, Hooper 2-K": {
    methods: [twoKLoss],
    run: (i) => ({
      K: twoKLoss({ laminar: i.K1, large: i.K_inf, reynolds: i.reynolds, bore: i.bore_m }),
    }),
  },
  "K of a 90 deg dividing tee, Crane 2009*": {
    methods: [teeRunLoss, teeBranchLoss],
    run: (i) => {
      const tee = {
        flowShare: i.flow_ratio_branch_to_combined,
        areaRatio: (i.bore_branch_m / i.bore_run_m) ** 2,
      };
      return { K_run: teeRunLoss(tee), K_branch: teeBranchLoss(tee) };
    },
  },
  "published worked example, 45 deg wye dividing": {
    methods: [teeRunLoss, wyeBranchLoss],
    run: (i) => {
      const wye = {
        flowShare: i.flow_branch_m3_per_s / (i.flow_branch_m3_per_s + i.flow_run_m3_per_s),
        areaRatio: (i.bore_branch_m / i.bore_run_m) ** 2,
        angle: i.angle_rad,
      };
      return { K_run: teeRunLoss(wye), K_branch: wyeBranchLoss(wye) };
    },
  },
  "K of straight passage in a dividing 90 deg tee, equal bores (Idelchik form)": {
    methods: [takeOffLoss],
    run: (i) => {
      const loss = takeOffLoss({ density: 1000, before: 1, after: i.flow_ratio_run_to_combined });
      return { K_run: loss / dynamicPressure({ density: 1000, velocity: 1 }) };
    },
  },
  "K of a hose-barb step bore*": {
    methods: [suddenContraction, suddenExpansion, lossReferredTo],
    run: (i) => {
      const contraction = suddenContraction({ boreRatio: i.barb_bore_m / i.hose_bore_m });
      const friction = i.darcy_friction_factor * i.barb_length_m / i.barb_bore_m;
      const widening = suddenExpansion({ boreRatio: i.barb_bore_m / i.port_bore_m });
      return {
        K_contraction_on_barb: contraction,
        K_friction_on_barb: friction,
        K_expansion_on_barb: widening,
        K_total_on_hose: lossReferredTo({
          lossCoefficient: contraction + friction + widening,
          bore: i.barb_bore_m,
          referenceBore: i.hose_bore_m,
        }),
      };
    },
  },
  "flow coefficient conversion": {
    methods: [flowAtLoss],
    run: ({ K: lossCoefficient, bore_m: bore }) => ({
      Kv_m3_per_h_at_1bar: flowAtLoss({ lossCoefficient, bore, ...KV }) * 3600,
      Cv_US_gal_per_min_at_1psi: flowAtLoss({ lossCoefficient, bore, ...CV }) * 60 / US_GALLON_m3,
    }),
  },
  "textbook worked example: gradual expansion*": {
    methods: [minorLoss, meanVelocity, dynamicPressure],
    run: (i) => {
      const density = i.density_kg_per_m3;
      const before = i.velocity_upstream_m_per_s;
      const flow = Math.PI / 4 * i.bore_upstream_m ** 2 * before;
      const after = meanVelocity({ flow, bore: i.bore_downstream_m });
      const loss = minorLoss({ lossCoefficient: i.K, density, velocity: before });
      const gained = dynamicPressure({ density, velocity: before }) -
        dynamicPressure({ density, velocity: after });
      return {
        head_loss_m: loss / (density * 9.80665),
        pressure_downstream_Pa: i.pressure_upstream_Pa + i.kinetic_energy_factor * gained - loss,
      };
    },
  },
};

/** Crane's printed friction factors: nominal inches, bore of schedule 40 pipe [m], f_T. */
const PRINTED_FRICTION: readonly [inches: string, bore_m: number, friction: number][] = [
  ["1/2", 15.80e-3, 0.026],
  ["3/4", 20.93e-3, 0.024],
  ["1", 26.64e-3, 0.022],
  ["1 1/4", 35.05e-3, 0.021],
  ["1 1/2", 40.89e-3, 0.020],
  ["2", 52.50e-3, 0.019],
  ["3", 77.93e-3, 0.017],
  ["4", 102.26e-3, 0.016],
  ["6", 154.05e-3, 0.015],
];

/** Checks of minor losses. */
export const minorLossChecks: Check[] = [
  ...fromReference("minor-losses.json", minorLosses),
  {
    name: "friction of fully turbulent flow rounds to the printed one for pipe of 1/2 to 6 in",
    methods: [roughPipeFriction],
    source: "Crane Technical Paper 410 (2009) A-26, three decimals",
    provenance: "from-memory",
    run: () => {
      for (const [inches, bore, printed] of PRINTED_FRICTION) {
        const friction = roughPipeFriction({ roughness: STEEL_PIPE_ROUGHNESS_m, bore });
        assert(Math.abs(friction - printed) <= 5.5e-4, `${inches} in: ${friction}, ${printed}`);
      }
    },
  },
  {
    name: "a sharp corner loses what Crane's table says at each of its lines",
    methods: [cornerLossCrane],
    source: "Crane Technical Paper 410 (2009) A-30, in f_T: 15 degrees 4, 30 8, ... 90 60",
    provenance: "from-memory",
    run: () => {
      [4, 8, 15, 25, 40, 60].forEach((printed, line) => {
        const turnAngle = (line + 1) * Math.PI / 12;
        const loss = cornerLossCrane({ turnAngle, frictionFactor: 0.02 });
        assertClose(loss, printed * 0.02, 1e-9, `line ${line}`);
      });
    },
  },
  {
    name: "friction of fully turbulent flow is where Colebrook's ends",
    methods: [roughPipeFriction],
    source: "C. F. Colebrook (1939), at Re 1e9",
    provenance: "second-correlation",
    run: () => {
      for (const bore of [6e-3, 16e-3, 0.1]) {
        const roughness = STEEL_PIPE_ROUGHNESS_m;
        assertClose(
          roughPipeFriction({ roughness, bore }),
          colebrookFriction({ reynolds: 1e9, relativeRoughness: roughness / bore }),
          1e-4,
        );
      }
    },
  },
  {
    name: "friction of fully turbulent flow stays within 2 % of a fit to Crane's table",
    methods: [roughPipeFriction],
    source: "fluids 1.0.22, fittings.ft_Crane, as minor-losses.json D-FT-1",
    provenance: "second-correlation",
    run: () => {
      for (const bore of [0.0158, 0.025, 0.05, 0.1]) {
        assertClose(
          roughPipeFriction({ roughness: STEEL_PIPE_ROUGHNESS_m, bore }),
          libraryFriction(bore),
          0.02,
        );
      }
    },
  },
  {
    name: "an entrance rounded by nothing and one bevelled by nothing are sharp",
    methods: [roundedEntrance, bevelledEntrance],
    source: "Rennels and Hudson (2012): 0.57 for a sharp entrance",
    provenance: "second-correlation",
    run: () => {
      assertClose(roundedEntrance({ radiusRatio: 0 }), SHARP_ENTRANCE.rennels, 0.002);
      const flat = bevelledEntrance({ lengthRatio: 0.2, angle: 1.55 });
      assertClose(flat, SHARP_ENTRANCE.rennels, 0.03);
    },
  },
  {
    name: "a contraction out of a large space and a cone as flat as a wall are sharp entrances",
    methods: [suddenContraction, conicalContraction],
    source: "Rennels and Hudson (2012): 0.57 for a sharp entrance",
    provenance: "second-correlation",
    run: () => {
      assertClose(suddenContraction({ boreRatio: 0.05 }), SHARP_ENTRANCE.rennels, 0.005);
      const flat = { boreRatio: 0.75, coneAngle: Math.PI, frictionFactor: 0.004 };
      const friction = 0.004 * (1 - 0.75 ** 4) / 8;
      assertClose(conicalContraction(flat) - friction, suddenContraction(flat), 1e-12);
    },
  },
  {
    name: "a swept bend of radius 1.5 bores loses as long-radius elbows do in handbooks",
    methods: [bendLoss],
    source:
      "Crane Technical Paper 410 (2009) A-30: 14 f_T for r/d 1.5, friction 0.019 of 2 in pipe",
    provenance: "from-memory",
    run: () => {
      const loss = bendLoss({ turnAngle: Math.PI / 2, radiusRatio: 1.5, frictionFactor: 0.019 });
      assertClose(loss, 14 * 0.019, 0.15);
    },
  },
  {
    name: "loss stated at one flow follows Poiseuille with exponent 1",
    methods: [statedLoss],
    source: "Hagen-Poiseuille, exact: 128 mu L Q / (pi d^4)",
    provenance: "exact-solution",
    run: () => {
      const drop = (flow: number) => {
        const bore = 6e-3;
        const fluid = { density: 790, viscosity: 1.2e-3 };
        const velocity = meanVelocity({ flow, bore });
        const frictionFactor = laminarFriction({
          reynolds: reynoldsNumber({ ...fluid, velocity, bore }),
        });
        return pipePressureDrop({ frictionFactor, length: 2, bore, velocity, ...fluid });
      };
      const [flow, newFlow] = [2e-6, 7e-6];
      const got = statedLoss({ loss: drop(flow), flow, newFlow, exponent: 1 });
      assertClose(got, 128 * 1.2e-3 * 2 * newFlow / (Math.PI * 6e-3 ** 4), 1e-12);
    },
  },
  {
    name: "loss stated at one flow follows an orifice with exponent 2",
    methods: [statedLoss, flowAtLoss],
    source: "F. M. White, Fluid Mechanics, 7th ed. (2011), section 6.12: flow through an orifice",
    provenance: "second-correlation",
    run: () => {
      const hole = { dischargeCoefficient: 0.61, hole: 3e-3, density: 745 };
      const flow = orificeFlow({ ...hole, differential: 2e4 });
      const newFlow = orificeFlow({ ...hole, differential: 1.3e5 });
      assertClose(statedLoss({ loss: 2e4, flow, newFlow, exponent: 2 }), 1.3e5, 1e-12);
      // A hole of C_d loses 1 / C_d^2 dynamic pressures of its bore.
      const lossCoefficient = 0.61 ** -2;
      assertClose(
        flowAtLoss({ lossCoefficient, bore: 3e-3, differential: 2e4, density: 745 }),
        flow,
        1e-12,
      );
    },
  },
  {
    name: "loss stated at one flow follows Blasius with exponent 1.75",
    methods: [statedLoss],
    source:
      "H. Blasius (1913), friction 0.3164 / Re^0.25; Colebrook's within 3 % from Re 1e4 to 4e4",
    provenance: "second-correlation",
    run: () => {
      // Loss in a smooth pipe goes with f Re^2.
      const loss = (reynolds: number) =>
        colebrookFriction({ reynolds, relativeRoughness: 0 }) * reynolds ** 2 / 1e4;
      const got = statedLoss({ loss: loss(1e4), flow: 1e-4, newFlow: 4e-4, exponent: 1.75 });
      assertClose(got, loss(4e4), 0.03);
    },
  },
  {
    name: "a flow coefficient goes back to the loss coefficient it was made from",
    methods: [lossCoefficientOf],
    source: "fluids 1.0.22, fittings.K_to_Kv: K 2 in 10 mm is Kv 2.828 m3/h",
    provenance: "computed-with-library",
    run: () => {
      const loss = lossCoefficientOf({ flow: 2.828427125 / 3600, bore: 0.01, ...KV });
      assertClose(loss, 2, 1e-3);
    },
  },
  {
    name: "ten metres of water are 98 kPa, up or down",
    methods: [hydrostaticPressure],
    source: "Definition of the metre of water at 4 °C: 9.80665 kPa",
    provenance: "exact-solution",
    run: () => {
      const water = { density: 1000, gravity: 9.80665 };
      assertClose(hydrostaticPressure({ ...water, rise: 10 }), 98066.5, 1e-12);
      assertClose(hydrostaticPressure({ ...water, rise: -10 }), -98066.5, 1e-12);
    },
  },
];

interface Steps {
  readonly bore_upstream_m: number;
  readonly bore_downstream_m: number;
}

function ratio({ bore_upstream_m, bore_downstream_m }: Steps): number {
  return Math.min(bore_upstream_m, bore_downstream_m) /
    Math.max(bore_upstream_m, bore_downstream_m);
}

// deno-lint-ignore no-explicit-any
function cone(i: any) {
  return {
    boreRatio: ratio(i),
    coneAngle: i.included_angle_rad,
    frictionFactor: i.darcy_friction_factor,
  };
}

/** The fit to Crane's table in fluids 1.0.22, fittings.ft_Crane, with its quick friction law. */
function libraryFriction(bore_m: number): number {
  return clamondOneStep(7.5e6 * bore_m, 3.4126825352925e-5 * bore_m ** -1.0112);
}

/** Colebrook's factor by one step of D. Clamond, Ind. Eng. Chem. Res. 48 (2009) 3665-3671. */
function clamondOneStep(reynolds: number, roughness: number): number {
  const rough = roughness * reynolds * Math.LN10 / 18.574;
  const start = Math.log(reynolds * Math.LN10 / 5.02) - 0.2;
  const [a, b] = [rough + start, 1 + rough + start];
  const error = (Math.log(a) - 0.2) / b;
  const root = start - (b + error / 2) * error * a / (b + error * (1 + error / 3));
  return (Math.LN10 / 2 / root) ** 2;
}
