import { dynamicPressure, meanVelocity, reynoldsNumber } from "@/lib/flow/mod.ts";
import { Working } from "@/lib/method/mod.ts";
import {
  flowSpread,
  type FrictionLaw,
  galleryVolume,
  orificeTakeOffs,
  railPressures,
  type RailSpec,
  railTwoEnds,
  railVolumes,
  shotShare,
  shotVolume,
  takeOffFactor,
  takeOffLoss,
  takeOffRecovery,
} from "@/lib/rail/mod.ts";
import { colebrookFriction, laminarFriction, pipePressureDrop } from "@/lib/flow/mod.ts";
import { assertClose } from "../../helpers/assert_close.ts";
import { type Answer, type Check, fromReference } from "../../helpers/checks.ts";
import { swameeJain } from "../flow/second_correlations.ts";

/** EPANET's law where its cases lie: laminar below 2000, Swamee-Jain from 4000. */
const epanetLaw: FrictionLaw = (reynolds, roughness) =>
  reynolds < 2000 ? 64 / reynolds : swameeJain(reynolds, roughness);

const methods = [
  meanVelocity,
  reynoldsNumber,
  laminarFriction,
  colebrookFriction,
  pipePressureDrop,
];

const network: Answer = {
  methods,
  run: (i) => ({ p_no_recovery_Pa: railPressures(railOf(i)).noRecovery_Pa }),
};

/** Checks of lib/rail. */
export const checks: Check[] = [
  ...fromReference("manifold.json", {
    "static pressure along a dividing-flow rail relative to the inlet section*": {
      methods: [...methods, takeOffRecovery, takeOffLoss],
      run: (i) => {
        const spec = railOf(i);
        const found = railPressures(spec);
        return {
          p_no_recovery_Pa: found.noRecovery_Pa,
          p_bernoulli_before_takeoff_Pa: found.fullBefore_Pa,
          p_bernoulli_after_takeoff_Pa: found.fullAfter_Pa,
          p_idelchik_before_takeoff_Pa: found.partBefore_Pa,
          p_idelchik_after_takeoff_Pa: found.partAfter_Pa,
          reynolds_per_section: spec.takeOffs_m.map((_, n) =>
            reynoldsNumber({
              density: spec.density_kg_m3,
              velocity: meanVelocity({
                flow: i.flow_per_takeoff_m3_per_s * (i.takeoffs - n),
                bore: spec.bore_m,
              }),
              bore: spec.bore_m,
              viscosity: spec.viscosity_Pa_s,
            })
          ),
        };
      },
    },
    "node pressures of the same rail, no recovery, from EPANET*": network,
    "two-end fed rail, no recovery*": {
      methods,
      run: (i) => {
        const found = railTwoEnds({
          ...railOf({ ...i, length_inlet_to_first_m: 0 }),
          length_m: i.pitch_m * (i.takeoffs - 1),
          feedA: { length_m: i.feed_A_length_m, bore_m: i.feed_A_bore_m },
          feedB: { length_m: i.feed_B_length_m, bore_m: i.feed_B_bore_m },
        });
        return {
          p_no_recovery_Pa: found.noRecovery_Pa,
          flow_A_m3_per_s: found.flowA_m3_s,
          flow_B_m3_per_s: found.flowB_m3_s,
        };
      },
    },
    "rail with pressure-dependent take-offs*": {
      methods,
      run: (i) => {
        const { pressures_Pa, flows_m3_s } = orificeTakeOffs({
          ...railOf(i),
          supply_Pa: i.supply_gauge_pressure_Pa,
          coefficient: i.takeoff_coefficient_m3_per_s_per_sqrtPa,
        });
        return {
          p_gauge_Pa: pressures_Pa,
          q_m3_per_s: flows_m3_s,
          q_spread_max_over_min_minus_1: Math.max(...flows_m3_s) / Math.min(...flows_m3_s) - 1,
        };
      },
    },
    "frictionless rail: static pressure rise from inlet to dead end": {
      methods: [dynamicPressure, meanVelocity],
      run: (i) => ({
        p_end_minus_p_inlet_Pa: dynamicPressure({
          density: i.density_kg_per_m3,
          velocity: meanVelocity({ flow: i.flow_total_m3_per_s, bore: i.rail_bore_m }),
        }),
      }),
    },
    "uniform-withdrawal friction loss*": {
      methods: [takeOffFactor],
      run: (i) => ({
        friction_with_uniform_withdrawal_Pa: i.full_flow_friction_Pa *
          takeOffFactor({ count: i.takeoffs }),
      }),
    },
  }),
  ...againstEpanet(),
  {
    name: "the recoveries of all take-offs add up to the dynamic pressure at the feed end",
    methods: [takeOffRecovery],
    source: "Bernoulli along the rail, velocity 0 at the dead end: 603.874 Pa",
    provenance: "computed-with-library",
    run: () => {
      const inlet = 1e-4 / (Math.PI / 4 * 0.01 ** 2);
      let sum = 0;
      for (let i = 0; i < 5; i++) {
        const [before, after] = [inlet * (1 - i / 5), inlet * (1 - (i + 1) / 5)];
        sum += takeOffRecovery({ density: 745, before, after });
      }
      assertClose(sum, 603.8742545, 1e-9);
    },
  },
  {
    name: "spread of flow by half the pressure spread agrees with orifices solved one by one",
    methods: [flowSpread],
    source: "manifold.json F-O-01: largest over smallest flow less one, 0.003727507047",
    provenance: "computed-with-library",
    run: () => {
      const { pressures_Pa } = orificeTakeOffs({
        bore_m: 6e-3,
        roughness_m: 1.5e-6,
        takeOffs_m: [0.1, 0.2, 0.3, 0.4],
        density_kg_m3: 745,
        viscosity_Pa_s: 4.1e-4,
        supply_Pa: 299544.1242,
        coefficient: 5.264704981e-8,
      });
      const spread = flowSpread({
        pressureSpread: Math.max(...pressures_Pa) - Math.min(...pressures_Pa),
        differential: 296e3,
      });
      assertClose(spread, 0.003727507047, 0.005);
    },
  },
  {
    name:
      "laminar friction of a rail with four equal take-offs is that of one section times 1 + 3/4 + 2/4 + 1/4",
    methods: [laminarFriction, pipePressureDrop],
    source: "Poiseuille's law in each section",
    provenance: "exact-solution",
    run: () => {
      const spec: RailSpec = {
        bore_m: 0.02,
        roughness_m: 2e-5,
        takeOffs_m: [0.1, 0.2, 0.3, 0.4],
        flow_m3_s: 8e-6,
        density_kg_m3: 790,
        viscosity_Pa_s: 1.2e-3,
      };
      const whole = 128 * 1.2e-3 * 0.1 * 8e-6 / (Math.PI * 0.02 ** 4);
      assertClose(railPressures(spec).noRecovery_Pa[3] ?? 0, -whole * 2.5, 1e-12);
    },
  },
  {
    name: "take-off factor is the sum of squares it stands for",
    methods: [takeOffFactor],
    source: "By hand: (16 + 9 + 4 + 1) / 16 / 4 for four take-offs",
    provenance: "exact-solution",
    run: () => assertClose(takeOffFactor({ count: 4 }), 30 / 64, 1e-15),
  },
  {
    name: "a gallery of 20 mm by 318.31 mm holds 100 mL; a shot of 75 mg petrol is a thousandth",
    methods: [galleryVolume, shotVolume, shotShare],
    source: "By hand: pi cm2 times 31.831 cm; 75 mg at 0.75 g/cm3",
    provenance: "exact-solution",
    run: () => {
      const volumes = railVolumes(new Working(), "rail", {
        bore_m: 0.02,
        length_m: 1 / Math.PI,
        fuelPerInjection_kg: 75e-6,
        density_kg_m3: 750,
      });
      assertClose(volumes.galleryVolume_m3, 1e-4, 1e-12);
      assertClose(volumes.shotVolume_m3, 1e-7, 1e-12);
      assertClose(volumes.shotShare, 1e-3, 1e-12);
    },
  },
];

// deno-lint-ignore no-explicit-any
function railOf(i: any): RailSpec {
  return {
    bore_m: i.rail_bore_m,
    roughness_m: i.roughness_m,
    takeOffs_m: Array.from(
      { length: i.takeoffs },
      (_, n) => i.length_inlet_to_first_m + n * i.pitch_m,
    ),
    flow_m3_s: i.takeoffs * (i.flow_per_takeoff_m3_per_s ?? 0),
    density_kg_m3: i.density_kg_per_m3,
    viscosity_Pa_s: i.dynamic_viscosity_Pa_s,
  };
}

/** With EPANET's own friction law in our march, within 0.5 % of its node pressures. */
function againstEpanet(): Check[] {
  const file = new URL("../../reference/manifold.json", import.meta.url);
  const cases = JSON.parse(Deno.readTextFileSync(file));
  // deno-lint-ignore no-explicit-any
  return cases.filter((c: any) => c.id.endsWith("-EP")).map((c: any): Check => ({
    name: `manifold.json ${c.id} within 0.5 % with the network program's own friction law`,
    methods: [pipePressureDrop, meanVelocity, reynoldsNumber],
    source: c.source,
    provenance: c.provenance,
    run: () => {
      const { noRecovery_Pa } = railPressures(railOf(c.inputs), epanetLaw);
      c.expected.p_no_recovery_Pa.forEach((want: number, n: number) =>
        assertClose(noRecovery_Pa[n] ?? NaN, want, 0.005, `take-off ${n + 1}`)
      );
    },
  }));
}
