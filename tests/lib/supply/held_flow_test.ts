/** The flow that is held, against the network itself: less is held, more is not. */
import { assert, assertEquals } from "@std/assert";
import { heldFlow, Supply, type SupplyState } from "@/lib/supply/mod.ts";
import { anySupply } from "./any_supply.ts";

const SYSTEMS = 400;

Deno.test("heldFlow(), with a little less burnt the regulator holds, with more it shuts", () => {
  let compared = 0;
  for (let seed = 1; seed <= SYSTEMS; seed++) {
    const { system, running } = anySupply(seed);
    const { pump, reference_Pa } = running;
    if (typeof pump === "number" || system.regulator.opens_Pa + reference_Pa <= 0) continue;
    const supply = new Supply(system);
    const solve = (demand_m3_s: number): SupplyState => {
      // Injectors that pass anything, so that the pump alone decides.
      const found = supply.solve({ ...running, demand_m3_s, injectors: 1, manifold_Pa: 0 });
      assert(found.ok, `system ${seed}`);
      return found.state;
    };
    // What the rails lose is carried by the square; two rounds bring it to the flow itself.
    let near = solve(running.demand_m3_s);
    let held = heldFlow(supply, pump, reference_Pa, near).flow_m3_s;
    if (held === undefined || held < 1e-6) continue;
    near = solve(0.98 * held);
    held = heldFlow(supply, pump, reference_Pa, near).flow_m3_s;
    if (held === undefined || held < 1e-6) continue;
    // Where the feed behind a regulator at the tank can't pass so much, less is burnt than asked.
    const above = solve(1.03 * held);
    if (above.state !== "shut" && above.injected_m3_s < held) continue;
    assertEquals(solve(0.97 * held).state === "shut", false, `system ${seed}`);
    assertEquals(above.state, "shut", `system ${seed}`);
    compared++;
  }
  assert(compared > SYSTEMS / 10, `${compared} compared`);
});

Deno.test("with everything shut the rail never stands above what the pump can make", () => {
  const { system } = anySupply(1);
  const supply = new Supply({
    ...system,
    tank_Pa: 0,
    head_Pa: 0,
    regulator: { place: "rail", opens_Pa: 4e5, droop_Pa_s_m3: 0, wideOpen: undefined },
    rails: { ...system.rails, count: 1, stations_m: [0.1], feed: "one-end" },
  });
  const found = supply.solve({
    pump: {
      isScaled: false,
      points: [
        { flow_m3_s: 0, pressure_Pa: 1e5, current_A: 5, at: 12 },
        { flow_m3_s: 5e-5, pressure_Pa: 2e4, current_A: 3, at: 12 },
      ],
    },
    demand_m3_s: 0,
    injectors: 1e-7,
    manifold_Pa: 0,
    reference_Pa: 0,
  });
  assert(found.ok);
  assert(found.state.junction_Pa < 1.001e5, `${found.state.junction_Pa}`);
  assertEquals(found.state.state, "shut");
  assertEquals(found.state.returned_m3_s, 0);
});
