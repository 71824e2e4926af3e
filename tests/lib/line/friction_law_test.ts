import { assert, assertAlmostEquals } from "@std/assert";
import { addFriction, DARCY, type Liquid } from "@/lib/line/mod.ts";
import type { FlowLaw } from "@/lib/network/mod.ts";
import { assertClose } from "../../helpers/assert_close.ts";
import { lawAt, quotientAt } from "../../helpers/law_at.ts";
import { Seeded } from "../../helpers/seeded.ts";

const ROUGH = [0, 1e-6, 1e-5, 1e-4, 1e-3, 5e-3, 0.02];
const petrol: Liquid = { density_kg_m3: 745, viscosity_Pa_s: 4.1e-4 };

Deno.test("DARCY, its elasticity is the difference quotient of its factor", () => {
  const step = 1e-5;
  for (let i = 0; i <= 200; i++) {
    const reynolds = 10 * 1e5 ** (i / 200);
    // Where two laws meet there is a kink, and no quotient across it.
    if ([2300, 4000].some((kink) => Math.abs(reynolds / kink - 1) < 2 * step)) continue;
    for (const roughness of ROUGH) {
      const factor = DARCY.factor(reynolds, roughness);
      const more = DARCY.factor(reynolds * (1 + step), roughness);
      const less = DARCY.factor(reynolds * (1 - step), roughness);
      assertAlmostEquals(
        DARCY.elasticity(reynolds, roughness, factor),
        (more - less) / factor / (2 * step),
        1e-8,
        `Re ${reynolds}, ${roughness}`,
      );
    }
  }
});

Deno.test("DARCY, no jump where its laws meet, and steeper loss past either", () => {
  const least = 1e-9;
  for (const roughness of ROUGH) {
    for (const reynolds of [2300, 4000]) {
      const below = DARCY.factor(reynolds * (1 - least), roughness);
      assertClose(DARCY.factor(reynolds * (1 + least), roughness), below, 1e-7, `${reynolds}`);
    }
    for (let reynolds = 10; reynolds < 1e6; reynolds *= 1.05) {
      const factor = DARCY.factor(reynolds, roughness);
      // Loss goes with f Re^2: less than nought here would be loss that falls with flow.
      assert(2 + DARCY.elasticity(reynolds, roughness, factor) >= 1, `Re ${reynolds}`);
    }
  }
});

Deno.test("addFriction(), laminar loss is Hagen and Poiseuille's to the last digits", () => {
  const duct = { bore_m: 8e-3, length_m: 3, roughness_m: 1e-5, frictionTimes: 1 };
  // Re 2300 is 5.9 mL/s here; down to nothing, through the solver's own start below Re 1.
  for (const flow_m3_s of [-5e-6, -1e-9, 1e-12, 1e-9, 2.6e-9, 1e-7, 5.8e-6]) {
    const exact_Pa = 128 * petrol.viscosity_Pa_s * 3 * flow_m3_s / (Math.PI * 8e-3 ** 4);
    assertClose(lawAt(lawOf(duct), flow_m3_s).drop_Pa, exact_Pa, 1e-12, `${flow_m3_s}`);
  }
  const still = lawAt(lawOf(duct), 0);
  assert(still.drop_Pa === 0 && still.slope_Pa_s_m3 > 0);
});

Deno.test("addFriction(), slope is the difference quotient, and losses turn round with the flow", () => {
  const by = new Seeded(1);
  for (let i = 0; i < 300; i++) {
    const law = lawOf({
      bore_m: by.between(3e-3, 20e-3),
      length_m: by.decades(0.05, 5),
      roughness_m: by.between(0, 20e-6),
      frictionTimes: by.oneOf([1, 3]),
    });
    const flow_m3_s = by.decades(1e-9, 1e-3);
    const at = lawAt(law, flow_m3_s);
    const back = lawAt(law, -flow_m3_s);
    assertClose(at.slope_Pa_s_m3, quotientAt(law, flow_m3_s), 1e-6, `duct ${i}`);
    assertClose(back.drop_Pa, -at.drop_Pa, 1e-12, `duct ${i}`);
    assertClose(back.slope_Pa_s_m3, at.slope_Pa_s_m3, 1e-12, `duct ${i}`);
  }
});

function lawOf(duct: Parameters<typeof addFriction>[0]): FlowLaw {
  const add = addFriction(duct, petrol);
  return (flow_m3_s, into) => {
    into.drop_Pa = 0;
    into.slope_Pa_s_m3 = 0;
    add(flow_m3_s, into);
  };
}
