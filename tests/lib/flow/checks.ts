import { assert } from "@std/assert";
import { Working } from "@/lib/method/mod.ts";
import {
  capillaryLeak,
  capillaryLeakWithEntry,
  colebrookFriction,
  darcyFriction,
  dynamicPressure,
  flowAtVelocity,
  gapLeak,
  hydrostaticPressure,
  jetVelocity,
  laminarFriction,
  massFlow,
  meanVelocity,
  minorLoss,
  orificeFlow,
  orificeFlowInPipe,
  type PipeFlow,
  pipeFlow,
  pipePressureDrop,
  relativeRoughness,
  reynoldsNumber,
  scaledFlow,
  transitionFriction,
  volumeFlow,
} from "@/lib/flow/mod.ts";
import { injectorDifferential, neededStaticFlow } from "@/lib/injector/mod.ts";
import { electricalPower, hydraulicPower } from "@/lib/supply/mod.ts";
import { assertClose } from "../../helpers/assert_close.ts";
import { type Answers, type Check, fromReference } from "../../helpers/checks.ts";
import { minorLossChecks } from "./minor_loss_checks.ts";
import {
  blasius,
  churchill,
  type Correlation,
  haaland,
  serghides,
  swameeJain,
} from "./second_correlations.ts";

interface FrictionInputs {
  readonly reynolds: number;
  readonly relative_roughness: number;
}

const friction = { run: frictionAnswer(darcyFriction) };
const turbulent = { ...friction, methods: [colebrookFriction] };

const frictionFactor: Answers = {
  "Darcy friction factor, Colebrook-White solved exactly": {
    methods: [colebrookFriction],
    run: ({ reynolds, relative_roughness }: FrictionInputs) => ({
      darcy_friction_factor: colebrookFriction({ reynolds, relativeRoughness: relative_roughness }),
    }),
  },
  "Darcy friction factor, laminar (Hagen-Poiseuille)": {
    methods: [laminarFriction],
    run: ({ reynolds }: FrictionInputs) => ({
      darcy_friction_factor: laminarFriction({ reynolds }),
    }),
  },
  "Darcy friction factor, smooth pipe, handbook list": turbulent,
  "Darcy friction factor, fully rough limit, Moody chart right-hand edge": turbulent,
  "Darcy friction factor, Moody chart value stated in a textbook example": turbulent,
  "measured Darcy friction factor, smooth pipe": {
    ...friction,
    methods: [laminarFriction, colebrookFriction, transitionFriction],
  },
  "scatter of measured friction factor in transition": {
    methods: [],
    run: () => ({}),
    leaves: {
      darcy_min: "the band has to hold it, not to equal it: checked by hand below",
      darcy_max: "as darcy_min",
    },
  },
  // The formulas of the second opinion, so that the sweeps below rest on checked ones.
  "Darcy friction factor, Churchill (1977) all-regime formula": {
    methods: [],
    run: frictionAnswer(churchill),
  },
  "Darcy friction factor, Blasius smooth pipe": { methods: [], run: frictionAnswer(blasius) },
  "explicit approximations to Colebrook": {
    methods: [colebrookFriction],
    run: ({ reynolds, relative_roughness }: FrictionInputs) => ({
      haaland: haaland(reynolds, relative_roughness),
      swamee_jain: swameeJain(reynolds, relative_roughness),
      serghides: serghides(reynolds, relative_roughness),
      colebrook: colebrookFriction({ reynolds, relativeRoughness: relative_roughness }),
    }),
  },
};

const ML_MIN_PER_M3_S = 60e6;

const orificeLeak: Answers = {
  "volume flow of an injector or orifice at another pressure difference (square-root law)": {
    methods: [scaledFlow],
    run: (i) => ({
      flow_new_m3_per_s: scaledFlow({
        flow: i.flow_rated_m3_per_s,
        differential: i.dp_rated_Pa,
        newDifferential: i.dp_new_Pa,
        density: 745,
        newDensity: 745,
      }),
    }),
  },
  "injector flow with a rail pressure NOT referenced to the manifold": {
    methods: [injectorDifferential, scaledFlow],
    run: (i) => {
      const differential = injectorDifferential({
        railGauge: i.rail_gauge_pressure_Pa,
        ambient: 101325,
        manifold: 101325 + i.manifold_gauge_pressure_Pa,
      });
      return {
        dp_Pa: differential,
        flow_m3_per_s: scaledFlow({
          flow: i.flow_rated_m3_per_s,
          differential: i.dp_rated_Pa,
          newDifferential: differential,
          density: 745,
          newDensity: 745,
        }),
      };
    },
  },
  "flow with a liquid of another density at equal dp": {
    methods: [scaledFlow, massFlow],
    run: (i) => {
      const flow = scaledFlow({
        flow: i.flow_calibration_m3_per_s,
        differential: 3e5,
        newDifferential: 3e5,
        density: i.density_calibration_kg_per_m3,
        newDensity: i.density_fuel_kg_per_m3,
      });
      return {
        flow_m3_per_s: flow,
        mass_flow_kg_per_s: massFlow({ flow, density: i.density_fuel_kg_per_m3 }),
      };
    },
  },
  "orifice flow from a large volume": {
    methods: [jetVelocity, orificeFlow, massFlow],
    run: (i) => {
      const flow = orificeFlow(holeOf(i));
      return {
        jet_velocity_ideal_m_per_s: jetVelocity(holeOf(i)),
        flow_m3_per_s: flow,
        mass_flow_kg_per_s: massFlow({ flow, density: i.density_kg_per_m3 }),
      };
    },
  },
  "orifice in a pipe with velocity of approach": {
    methods: [orificeFlowInPipe],
    run: (i) => ({ flow_m3_per_s: orificeFlowInPipe(holeOf(i)) }),
  },
  "textbook: methanol through an orifice meter*": {
    methods: [orificeFlowInPipe, meanVelocity],
    run: (i) => {
      const flow = orificeFlowInPipe(holeOf(i));
      return {
        flow_m3_per_s: flow,
        pipe_velocity_m_per_s: meanVelocity({ flow, bore: i.bore_m }),
      };
    },
  },
  "pinhole leak, sharp-edged": {
    methods: [orificeFlow, jetVelocity, reynoldsNumber],
    run: (i) => {
      const flow = orificeFlow(holeOf(i));
      const reynolds = i.density_kg_per_m3 * jetVelocity(holeOf(i)) * i.hole_diameter_m /
        i.dynamic_viscosity_Pa_s;
      return {
        flow_m3_per_s: flow,
        flow_mL_per_min: flow * ML_MIN_PER_M3_S,
        reynolds_hole: reynolds,
      };
    },
  },
  "laminar capillary leak (Hagen-Poiseuille)": {
    methods: [capillaryLeak, capillaryLeakWithEntry],
    run: (i) => {
      const path = {
        diameter: i.path_diameter_m,
        length: i.path_length_m,
        differential: i.dp_Pa,
        viscosity: i.dynamic_viscosity_Pa_s,
        density: i.density_kg_per_m3,
      };
      const flow = capillaryLeak(path);
      const velocity = 4 * flow / (Math.PI * path.diameter ** 2);
      return {
        flow_m3_per_s: flow,
        flow_mL_per_min: flow * ML_MIN_PER_M3_S,
        reynolds: path.density * velocity * path.diameter / path.viscosity,
        flow_with_kinetic_term_m3_per_s: capillaryLeakWithEntry(path),
      };
    },
  },
  "laminar leak through a flat gap*": {
    methods: [gapLeak],
    run: (i) => {
      const flow = gapLeak({
        width: i.gap_width_m,
        height: i.gap_height_m,
        length: i.path_length_m,
        differential: i.dp_Pa,
        viscosity: i.dynamic_viscosity_Pa_s,
      });
      return { flow_m3_per_s: flow, flow_mL_per_min: flow * ML_MIN_PER_M3_S };
    },
  },
  "static injector flow needed": {
    methods: [neededStaticFlow],
    run: (i) => {
      // Any interval does: without dead time only the share of it counts.
      const interval = 0.02;
      const flow = neededStaticFlow({
        fuelPerInjection: i.fuel_mass_flow_kg_per_s / i.injectors * interval,
        density: i.density_kg_per_m3,
        interval,
        dutyAim: i.duty_max,
        deadTime: 0,
      });
      return {
        static_flow_per_injector_m3_per_s: flow,
        static_flow_cm3_per_min: flow * ML_MIN_PER_M3_S,
      };
    },
  },
};

const pipe = [meanVelocity, reynoldsNumber, colebrookFriction, pipePressureDrop];

const lineDrop: Answers = {
  "textbook: laminar water in a small tube": {
    methods: [meanVelocity, flowAtVelocity, reynoldsNumber, laminarFriction, pipePressureDrop],
    run: (i) => {
      const flow_m3_s = flowAtVelocity({ velocity: i.velocity_m_per_s, bore: i.bore_m });
      return textbookPipe({ ...i, flow_m3_per_s: flow_m3_s });
    },
  },
  "textbook: turbulent water in a 2 in stainless pipe": {
    methods: [...pipe, hydraulicPower, relativeRoughness],
    run: textbookPipe,
  },
  "textbook: gravity flow between reservoirs with fittings": {
    methods: [...pipe, relativeRoughness, minorLoss],
    run: textbookPipe,
  },
  "pressure drop of a line*": {
    methods: [...pipe, minorLoss, hydrostaticPressure, dynamicPressure],
    run: wholeLine,
    leaves: { segments: "a list of records: each is held against it below, more closely" },
  },
};

/** Checks of lib/flow. */
export const checks: Check[] = [
  ...fromReference("friction-factor.json", frictionFactor),
  ...fromReference("orifice-leak.json", orificeLeak),
  ...fromReference("line-pressure-drop.json", lineDrop),
  ...segments(),
  ...sweeps(),
  ...minorLossChecks,
  {
    name: "laminar pipe, from flow to loss, is Poiseuille's law",
    methods: [laminarFriction, pipePressureDrop, reynoldsNumber, meanVelocity],
    source: "Hagen-Poiseuille: 128 mu L Q / (pi d^4)",
    provenance: "exact-solution",
    run: () => {
      const drop = pipeFlow(new Working(), "pipe", {
        flow_m3_s: 2e-6,
        bore_m: 6e-3,
        roughness_m: 1e-5,
        length_m: 2,
        density_kg_m3: 790,
        viscosity_Pa_s: 1.2e-3,
      });
      assertClose(drop.pressureDrop_Pa, 128 * 1.2e-3 * 2 * 2e-6 / (Math.PI * 6e-3 ** 4), 1e-12);
    },
  },
  {
    name: "the straight line starts on the laminar law and ends on the turbulent one",
    methods: [transitionFriction],
    source: "Hagen-Poiseuille at Re 2300; Prandtl's smooth-pipe law at Re 4000 by scipy's lambertw",
    provenance: "computed-with-library",
    run: () => {
      assertClose(darcyFriction(2300 + 1e-9, 0), 64 / 2300, 1e-9);
      assertClose(darcyFriction(4000 - 1e-9, 0), 0.03990701406, 1e-9);
      assertClose(darcyFriction(3150, 0), (64 / 2300 + 0.03990701406) / 2, 1e-9);
    },
  },
  {
    name: "the band between the laws holds what one pipe gave from Re 2868 to 3080",
    methods: [laminarFriction, colebrookFriction, transitionFriction],
    source: "C. J. Swanson and others, J. Fluid Mech. 461 (2002) 51-60: 0.02804 to 0.04285",
    provenance: "read-from-source",
    run: () => {
      assert(laminarFriction({ reynolds: 2868 }) < 0.02804);
      assert(colebrookFriction({ reynolds: 3080, relativeRoughness: 0 }) > 0.04285);
      for (const reynolds of [2868, 3080]) {
        const between = darcyFriction(reynolds, 0);
        assert(between > 0.02804 && between < 0.04285, `${between} at Re ${reynolds}`);
      }
    },
  },
  {
    name: "relative roughness of a 3 in pipe with 0.006 in of roughness is 0.002",
    methods: [relativeRoughness],
    source: "J. K. Vennard, R. L. Street, Elementary Fluid Mechanics, example 9.3",
    provenance: "read-from-source",
    run: () =>
      assertClose(relativeRoughness({ roughness: 0.006 * 0.0254, bore: 3 * 0.0254 }), 0.002, 1e-12),
  },
  {
    name: "dynamic pressure of water at 10 m/s is 50 kPa",
    methods: [dynamicPressure],
    source: "Bernoulli: a head of V^2 / 2g, 5.0986 m of water, weighs 50 kPa a square metre",
    provenance: "exact-solution",
    run: () =>
      assertClose(
        dynamicPressure({ density: 1000, velocity: 10 }),
        1000 * 9.80665 * 100 / (2 * 9.80665),
        1e-12,
      ),
  },
  {
    name: "jet out of a tank falls as far as the head that drives it",
    methods: [jetVelocity],
    source: "Torricelli: v^2 = 2 g h",
    provenance: "exact-solution",
    run: () => {
      const velocity = jetVelocity({ differential: 998 * 9.80665 * 7, density: 998 });
      assertClose(velocity ** 2, 2 * 9.80665 * 7, 1e-12);
    },
  },
  {
    name: "one kilogram of water a second is one litre a second",
    methods: [volumeFlow, massFlow],
    source: "Water near 4 °C, 1000 kg/m3",
    provenance: "exact-solution",
    run: () => {
      assertClose(volumeFlow({ massFlow: 1, density: 1000 }), 1e-3, 1e-15);
      assertClose(massFlow({ flow: 1e-3, density: 1000 }), 1, 1e-15);
    },
  },
];

function frictionAnswer(law: Correlation): (i: FrictionInputs) => unknown {
  return ({ reynolds, relative_roughness }) => ({
    darcy_friction_factor: law(reynolds, relative_roughness),
  });
}

// deno-lint-ignore no-explicit-any
function holeOf(i: any) {
  return {
    dischargeCoefficient: i.discharge_coefficient,
    hole: i.hole_diameter_m,
    bore: i.bore_m,
    diameterRatio: i.hole_diameter_m / i.bore_m,
    differential: i.dp_Pa,
    density: i.density_kg_per_m3,
  };
}

// deno-lint-ignore no-explicit-any
function textbookPipe(i: any): unknown {
  const { minor_Pa, ...flow } = segmentOf(i, i);
  const loss_Pa = flow.pressureDrop_Pa + minor_Pa;
  const power = hydraulicPower({ flow: i.flow_m3_per_s, pressureRise: loss_Pa });
  return {
    reynolds: flow.reynolds,
    darcy_friction_factor: flow.frictionFactor,
    dp_loss_Pa: loss_Pa,
    head_loss_m: loss_Pa / (i.density_kg_per_m3 * (i.gravity_m_per_s2 ?? 9.80665)),
    pump_power_W: electricalPower({ hydraulicPower: power, efficiency: 1 }),
  };
}

/** A straight piece with its fittings. */
// deno-lint-ignore no-explicit-any
function segmentOf(line: any, segment: any): PipeFlow & { readonly minor_Pa: number } {
  const density = line.density_kg_per_m3;
  const flow = pipeFlow(new Working(), "line", {
    flow_m3_s: line.flow_m3_per_s,
    bore_m: segment.bore_m,
    roughness_m: segment.roughness_m,
    length_m: segment.length_m,
    density_kg_m3: density,
    viscosity_Pa_s: line.dynamic_viscosity_Pa_s,
  });
  const velocity = flow.velocity_m_s;
  return { ...flow, minor_Pa: minorLoss({ lossCoefficient: segment.sum_K, density, velocity }) };
}

/** A line of several segments: losses, height, and what the change of velocity takes. */
// deno-lint-ignore no-explicit-any
function wholeLine(i: any): unknown {
  const density = i.density_kg_per_m3;
  // deno-lint-ignore no-explicit-any
  const parts = i.segments.map((segment: any) => segmentOf(i, segment));
  const sum = (of: (part: ReturnType<typeof segmentOf>) => number): number =>
    parts.map(of).reduce((a: number, b: number) => a + b, 0);
  const height_Pa = hydrostaticPressure({
    density,
    gravity: i.gravity_m_per_s2,
    rise: i.rise_outlet_above_inlet_m,
  });
  const loss_Pa = sum((p) => p.pressureDrop_Pa + p.minor_Pa);
  const dynamic_Pa = (part: PipeFlow) => dynamicPressure({ density, velocity: part.velocity_m_s });
  return {
    dp_elevation_Pa: height_Pa,
    dp_loss_Pa: loss_Pa,
    dp_total_Pa: loss_Pa + height_Pa,
    dp_total_low_Pa: sum((p) => p.pressureDropLow_Pa + p.minor_Pa) + height_Pa,
    dp_total_high_Pa: sum((p) => p.pressureDropHigh_Pa + p.minor_Pa) + height_Pa,
    dp_static_extra_acceleration_Pa: dynamic_Pa(parts.at(-1)) - dynamic_Pa(parts[0]),
  };
}

/** Each segment of the lines. */
function segments(): Check[] {
  const file = new URL("../../reference/line-pressure-drop.json", import.meta.url);
  const cases = JSON.parse(Deno.readTextFileSync(file));
  // deno-lint-ignore no-explicit-any
  return cases.filter((c: any) => c.inputs.segments).flatMap((c: any): Check[] =>
    // deno-lint-ignore no-explicit-any
    c.inputs.segments.map((segment: any, n: number): Check => ({
      name: `line-pressure-drop.json ${c.id}, segment ${n + 1}`,
      methods: [
        meanVelocity,
        reynoldsNumber,
        laminarFriction,
        colebrookFriction,
        pipePressureDrop,
        minorLoss,
      ],
      source: c.source,
      provenance: c.provenance,
      run: () => {
        const want = c.expected.segments[n];
        const got = segmentOf(c.inputs, segment);
        assertClose(got.velocity_m_s, want.velocity_m_per_s, 1e-6, "velocity");
        assertClose(got.reynolds, want.reynolds, 1e-6, "Reynolds number");
        const factor = want.darcy_friction_factor;
        if (factor !== undefined) assertClose(got.frictionFactor, factor, 1e-6, "friction factor");
        const friction = want.dp_friction_Pa;
        assertClose(got.pressureDropLow_Pa, want.dp_friction_low_Pa ?? friction, 1e-6, "least");
        assertClose(got.pressureDropHigh_Pa, want.dp_friction_high_Pa ?? friction, 1e-6, "most");
        assertClose(got.minor_Pa, want.dp_minor_Pa, 1e-6, "fittings");
      },
    }))
  );
}

/** Colebrook's against other people's formulas over the range where they are said to hold. */
function sweeps(): Check[] {
  const cases: [
    name: string,
    law: Correlation,
    from: number,
    to: number,
    roughest: number,
    within: number,
    source: string,
  ][] = [
    ["Serghides", serghides, 4e3, 1e8, 0.05, 4e-5, "T. K. Serghides, Chem. Eng. 91(5) (1984) 63"],
    ["Haaland", haaland, 4e3, 1e8, 0.05, 0.02, "S. E. Haaland, J. Fluids Eng. 105 (1983) 89"],
    [
      "Swamee and Jain",
      swameeJain,
      5e3,
      1e8,
      0.01,
      0.03,
      "P. K. Swamee, A. K. Jain, J. Hydraul. Div. ASCE 102 (1976) 657",
    ],
    ["Churchill", churchill, 4e3, 1e8, 0.05, 0.035, "S. W. Churchill, Chem. Eng. 84(24) (1977) 91"],
  ];
  return cases.map(([name, law, from, to, roughest, within, source]) => ({
    name: `turbulent friction stays within ${within} of ${name} from Re ${from} to ${to}`,
    methods: [colebrookFriction],
    source,
    provenance: "second-correlation",
    run: () => {
      for (let i = 0; i <= 40; i++) {
        const reynolds = from * (to / from) ** (i / 40);
        for (const share of [0, 1e-4, 1e-3, 0.01, 0.1, 0.3, 1]) {
          const rough = share * roughest;
          const ours = colebrookFriction({ reynolds, relativeRoughness: rough });
          assertClose(ours, law(reynolds, rough), within, `Re ${reynolds}, roughness ${rough}`);
        }
      }
    },
  }));
}
