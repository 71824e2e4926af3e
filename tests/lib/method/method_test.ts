import { assert, assertEquals, assertThrows } from "@std/assert";
import { InputError } from "@/lib/basics/mod.ts";
import { isMethod, method, Working } from "@/lib/method/mod.ts";

const speed = method({
  id: "mean-speed",
  title: "Mean speed",
  inputs: {
    way: { unit: "m", min: 0, max: 100, says: "Way gone" },
    time: { unit: "s", min: 0, open: true, max: 100, says: "Time taken" },
  },
  output: { name: "speed", unit: "m/s", min: 0, max: 50, says: "Mean speed" },
  formula: "way / time",
  source: "kinematics",
  compute: ({ way, time }) => way / time,
});

Deno.test("method() computes within its limits and carries its declaration", () => {
  assertEquals(speed({ way: 10, time: 4 }), 2.5);
  assertEquals(speed.id, "mean-speed");
  assertEquals(speed.inputs.time.open, true);
  assert(isMethod(speed));
  assert(!isMethod(speed.compute));
});

Deno.test("method() names the input that is out of range", () => {
  for (const [way, time, field] of [[-1, 1, "way"], [1, 0, "time"], [NaN, 1, "way"]] as const) {
    const error = assertThrows(() => speed({ way, time }), InputError, "mean speed");
    assertEquals(error.field, field);
  }
});

Deno.test("method() never returns a number outside the range of its result", () => {
  const error = assertThrows(() => speed({ way: 100, time: 0.01 }), InputError, "from 0 to 50 m/s");
  assertEquals(error.field, "speed");
});

Deno.test("Working keeps what ran and nothing that failed", () => {
  const working = new Working();
  assertEquals(working.run("trip.speed_m_s", speed, { way: 10, time: 4 }), 2.5);
  assertThrows(() => working.run("trip.speed_m_s", speed, { way: 10, time: 0 }), InputError);
  assertEquals(working.uses.map((u) => [u.result, u.method, u.value]), [[
    "trip.speed_m_s",
    "mean-speed",
    2.5,
  ]]);
});
