/** What is judged of the supply, number by number. */
import { assert, assertAlmostEquals, assertEquals } from "@std/assert";
import { CRITERIA, evaluate } from "@/lib/evaluation/mod.ts";
import { assertClose } from "../../helpers/assert_close.ts";
import { planOf } from "../../helpers/plan_of.ts";
import { changed, check, demo, pointOf } from "./changed_demos.ts";

Deno.test("voltage lost and fuse, by hand", () => {
  const found = changed("hillclimb-four-e85");
  // 2.5 mm2 at 60 degC: 7.98 mohm/m * (1 + 0.00393 * 40) * 4.4 m = 40.632 mohm; 8.36465 A; 0.15 V.
  assertClose(check(found, "wire-loss").value ?? NaN, 0.040632 * 8.36465 + 0.15, 1e-4);
  const { limit } = check(found, "fuse");
  assert(limit !== undefined && typeof limit !== "number");
  assertClose(limit[0], 1.25 * 8.36465, 1e-4);
  assertEquals(limit[1], 17.4);
});

Deno.test("what a starter turns, by hand", () => {
  // 200 rpm at half the crank's speed displace 933.33 L/h * 1.6667 / 61.667 = 25.225 L/h; the engine
  // burns 14.582 L/h, so 10.643 slip back at 13.333 L/h a bar: 0.7983 bar, and 15.3 mbar of head on
  // top; 2.5 mbar are lost in the two filters. The regulator should hold 58 psi.
  const { value } = check(changed("dragster-vee-methanol"), "cranking-held");
  assertClose(value ?? NaN, (0.7983 + 0.0153 - 0.0025) / 3.99896, 1e-3);
});

Deno.test("a filter due for change is taken to lose twice as much where nothing is stated", () => {
  const margin = (stated: object): number => {
    const filter = { piece: "filter", flow: "300 L/h", loss: "30 kPa", ...stated };
    const feed = [{ piece: "hose", size: "-8", length: "1 m" }, filter];
    return changed("hillclimb-four-e85", { supply: { feed } }).results.pump?.dirtyMargin ?? NaN;
  };
  assertEquals(margin({}), margin({ dirtyLoss: "60 kPa" }));
  assert(margin({}) < margin({ dirtyLoss: "40 kPa" }));
});

Deno.test("more pressure than there should be counts as much as less", () => {
  const found = changed("hillclimb-four-e85", {
    supply: { return: [{ piece: "hose", bore: "4 mm", length: "4 m" }] },
  });
  const idle = pointOf(found, "idle");
  assertEquals(idle.regulator, "wide-open");
  const { value, because, verdict } = check(found, "pressure-held");
  // The air at 600 m is 94.32 kPa, the manifold at 35 kPa: the rail lies 59.32 kPa nearer to it.
  assertClose(value ?? NaN, 3e5 / (idle.rail_Pa + 59.32e3), 1e-4);
  assertEquals(verdict, "fails");
  assert(because.includes("the return holds the pressure up"), because);
});

Deno.test("fuel that stands in a hot rail is under what a check valve holds, and the air", () => {
  const held = changed("hillclimb-four-e85").results.vapour;
  const loose = changed("hillclimb-four-e85", { supply: { holdsPressure: "no" } }).results.vapour;
  // ISO 2533: 94.32 kPa at 600 m.
  assertAlmostEquals(held?.soak_Pa ?? NaN, 3e5 + 94.32e3, 10);
  assertAlmostEquals(loose?.soak_Pa ?? NaN, 94.32e3, 10);
});

Deno.test("injectors held open pass what the root law lets them", () => {
  const stages = [{ flow: "400 cc/min", pressure: "3 bar", deadTime: "1 ms" }];
  const found = changed("hillclimb-four-e85", { injectors: { stages } });
  const { injected_m3_s, rail_Pa } = pointOf(found, "peak");
  const density_kg_m3 = found.results.demand?.fuel.density_kg_m3 ?? NaN;
  // n-heptane at 20 degC: 683.8 kg/m3.
  const passed_m3_s = 4 * 400e-6 / 60 * Math.sqrt((rail_Pa - 1.6e5) / 3e5 * 683.8 / density_kg_m3);
  assertClose(injected_m3_s, passed_m3_s, 1e-3);
});

Deno.test("a slowed pump gets its own share of the voltage at idle and at cruise, full power all", () => {
  const found = changed("hillclimb-four-e85", {
    pump: { control: "reduced", idleShare: "60 %", cruiseShare: "80 %", wireLoss: "0 V" },
    operating: { idleVoltage: "13 V", cruiseVoltage: "14 V" },
  });
  assertClose(pointOf(found, "idle").terminal_V ?? NaN, 0.6 * 13, 1e-9);
  assertClose(pointOf(found, "cruise").terminal_V ?? NaN, 0.8 * 14, 1e-9);
  assertClose(pointOf(found, "peak").terminal_V ?? NaN, 13, 1e-9);
});

Deno.test("how far a pump may wear is what its margin is worth", () => {
  const found = changed("hillclimb-four-e85");
  const { value = NaN, because } = check(found, "pump-margin");
  const worn = Number(/Worn by ([\d.]+)/.exec(because)?.[1]);
  assertAlmostEquals(worn, 100 * value / (1 + value), 0.06);
});

Deno.test("injectors to buy are for the pressure of a pump that suffices", () => {
  const needed = (count: number): number => {
    const found = changed("hillclimb-four-e85", {
      pump: {
        count,
        points: [{ pressure: "3 bar", flow: "130 L/h" }, { pressure: "6 bar", flow: "80 L/h" }],
      },
    });
    const isShort = check(found, "duty-peak").because.includes("does not hold the pressure");
    assertEquals(isShort, count === 1);
    return found.results.injectors?.stages[0]?.neededFlow_m3_s ?? NaN;
  };
  assertClose(needed(1), needed(4), 0.01);
});

Deno.test("injectors to buy for a plan without any are for a pump that suffices, too", () => {
  const shop = (points: object[]): number => {
    const { injectors: _, ...plan } = demo("hillclimb-four-e85");
    const pump = { points, voltage: "13 V" };
    return evaluate(planOf({ ...plan, pump })).results.injectors?.shopFlow_m3_s ?? NaN;
  };
  const strong = [{ pressure: "3 bar", flow: "500 L/h" }, { pressure: "6 bar", flow: "400 L/h" }];
  const weak = [{ pressure: "3 bar", flow: "130 L/h" }, { pressure: "6 bar", flow: "80 L/h" }];
  assertClose(shop(weak), shop(strong), 0.01);
});

Deno.test("limits and aims of the supply that the design's table leaves to us", () => {
  const { pressureHeld, crankingHeld, liftMargin } = CRITERIA;
  assertEquals([pressureHeld.limit, pressureHeld.aim], [0.95, 0.98]);
  assertEquals([crankingHeld.limit, crankingHeld.aim], [0.6, 0.8]);
  // As for the pump that it feeds.
  assertEquals([liftMargin.limit, liftMargin.aim], [0.1, 0.2]);
});

Deno.test("at the suction's ceiling the inlet stands at the limit above boiling", () => {
  const hot = {
    supply: {
      suction: [{ piece: "hose", bore: "12 mm", length: "3 m" }],
      tankPressure: "-10 kPa",
    },
    fuel: { hottestTank: "60 °C" },
  };
  const { ceilings } = changed("dragster-vee-methanol", hot);
  const suction = ceilings.find(({ id }) => id === "suction");
  assert(suction?.because.startsWith("Only "), suction?.because);
  // A pump to shop for moves 20 % more than is burnt: at so much less power it moves the same.
  const there = changed("dragster-vee-methanol", {
    ...hot,
    pump: { points: [] },
    engine: { power: `${(suction?.power_W ?? NaN) / 1.2} W` },
  });
  assertAlmostEquals(check(there, "inlet-vapour").value ?? NaN, CRITERIA.inletVapour.limit, 5);
});

Deno.test("the current of a pump with one figure is what its power takes", () => {
  const points = [{ pressure: "5 bar", flow: "400 L/h" }];
  const { results } = changed("hillclimb-four-e85", { pump: { points, efficiency: "40 %" } });
  // 5 bar and 400 L/h are 55.556 W.
  assertClose(results.wiring?.current_A ?? NaN, 55.5556 / (0.4 * 13), 1e-5);
});
