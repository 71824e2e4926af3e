import { assert, assertEquals, assertStringIncludes, assertThrows } from "@std/assert";
import { Working } from "@/lib/method/mod.ts";
import { pumpWiring, type PumpWiringSpec, WIRES, wireWarming } from "@/lib/wiring/mod.ts";
import { assertClose } from "../../helpers/assert_close.ts";

const SPEC: PumpWiringSpec = {
  battery_V: 13.2,
  current_A: 15,
  wire: WIRES["4 mm2"],
  outLength_m: 4,
  returnLength_m: 1,
  conductorTemperature_K: 333.15,
  contacts_V: 0.15,
};

function wiring(change: Partial<PumpWiringSpec>): ReturnType<typeof pumpWiring> {
  return pumpWiring(new Working(), "wiring", { ...SPEC, ...change });
}

Deno.test("pump wiring: every number is in the record under its key", () => {
  const working = new Working();
  const found = pumpWiring(working, "wiring", SPEC);
  const recorded = Object.fromEntries(working.uses.map(({ result, value }) => [result, value]));
  for (const [key, value] of Object.entries(found)) assertEquals(recorded[`wiring.${key}`], value);
});

Deno.test("pump wiring: the film that warming counts on is the one its source states", () => {
  const working = new Working();
  pumpWiring(working, "wiring", SPEC);
  const used = working.uses.find(({ method }) => method === wireWarming.id)?.inputs.filmCoefficient;
  assertStringIncludes(wireWarming.source, `coefficient ${used} W/(m^2 K) assumed`);
});

Deno.test("pump wiring: out and back count alike, whichever is the longer", () => {
  assertEquals(wiring({ outLength_m: 1, returnLength_m: 4 }), wiring({}));
});

Deno.test("pump wiring: twice the current loses twice in the wires and warms four times", () => {
  const [once, twice] = [wiring({}), wiring({ current_A: 30 })];
  assertClose(twice.drop_V, 2 * once.drop_V, 1e-12);
  assertClose(twice.heat_W, 4 * once.heat_W, 1e-12);
  assertClose(twice.warming_K, 4 * once.warming_K, 1e-12);
});

Deno.test("pump wiring: contacts lose beside the wires, and warm none of them", () => {
  const [with_, without] = [wiring({}), wiring({ contacts_V: 0 })];
  assertClose(with_.lost_V - without.lost_V, 0.15, 1e-12);
  assertClose(with_.terminal_V, 13.2 - with_.lost_V, 1e-12);
  assertEquals(with_.heat_W, without.heat_W);
});

Deno.test("pump wiring: no current and no length lose nothing but at the contacts", () => {
  assertEquals(wiring({ current_A: 0 }).lost_V, 0.15);
  assertEquals(wiring({ outLength_m: 0, returnLength_m: 0 }).lost_V, 0.15);
});

Deno.test("pump wiring: a current that the battery can't drive shows below zero", () => {
  assert(wiring({ wire: WIRES["0.75 mm2"], outLength_m: 50, current_A: 40 }).terminal_V < 0);
});

Deno.test("pump wiring: a negative length is refused by name", () => {
  assertThrows(() => wiring({ outLength_m: -1 }), RangeError, "outLength must be >= 0");
  assertThrows(() => wiring({ returnLength_m: NaN }), RangeError, "returnLength must be >= 0");
});
