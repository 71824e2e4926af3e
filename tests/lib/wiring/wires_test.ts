import { assert, assertEquals } from "@std/assert";
import { nextWire, type Wire, WIRES, type WireSize } from "@/lib/wiring/mod.ts";
import { assertClose } from "../../helpers/assert_close.ts";

const SIZES = Object.keys(WIRES) as WireSize[];

Deno.test("wires: the next one has more copper, loses less and bears more", () => {
  for (const size of SIZES) {
    const next = nextWire(size);
    if (next === undefined) continue;
    const [thin, thick]: [Wire, Wire] = [WIRES[size], WIRES[next]];
    assert(thick.area_m2 > thin.area_m2, next);
    assert(thick.resistance20_ohm_m < thin.resistance20_ohm_m, next);
    assert(thick.outside_m > thin.outside_m, next);
    assert(thick.rating_A > thin.rating_A, next);
  }
});

Deno.test("wires: from the thinnest the steps lead through each family, and end", () => {
  const seen: WireSize[] = [];
  for (const thinnest of ["0.75 mm2", "AWG 18"] as const) {
    for (let size: WireSize | undefined = thinnest; size; size = nextWire(size)) seen.push(size);
  }
  assertEquals(seen, SIZES);
});

Deno.test("wires: a metric wire has the area in its name", () => {
  for (const size of SIZES) {
    if (size.endsWith("mm2")) assertClose(WIRES[size].area_m2 * 1e6, parseFloat(size), 1e-12, size);
  }
});

Deno.test("wires: insulation is thicker than copper, and each says what it is and from where", () => {
  for (const size of SIZES) {
    const { area_m2, outside_m, says, source } = WIRES[size];
    assert(outside_m > Math.sqrt(4 * area_m2 / Math.PI), size);
    assert(says.includes("mm²") && source.length > 40, size);
  }
});
