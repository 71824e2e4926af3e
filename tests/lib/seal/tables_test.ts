/** Tables of the seal room: whole, in order, and with something to do wherever it matters. */
import { assert, assertEquals, assertThrows } from "@std/assert";
import { InputError } from "@/lib/basics/mod.ts";
import {
  fuelGroup,
  gapAllowed,
  holeTolerance,
  INCH_RINGS,
  MATERIALS_AGAINST_FUEL,
  METRIC_RINGS,
  ringOfSize,
  sectionLimits,
} from "@/lib/seal/mod.ts";
import { MATERIALS } from "@/lib/strength/mod.ts";

const ROWS = Object.entries(MATERIALS_AGAINST_FUEL).flatMap(([group, rows]) =>
  Object.entries(rows).map(([name, row]) => ({ name: `${group}, ${name}`, row }))
);

Deno.test("every cell says why and from where, and what to do unless all is well", () => {
  for (const { name, row } of ROWS) {
    assertEquals(Object.keys(row.fuels), ["petrol", "E10", "E85", "methanol"], name);
    for (const [fuel, cell] of Object.entries(row.fuels)) {
      const where = `${name}, ${fuel}`;
      assert(cell.why.length > 10 && cell.source.length > 10, where);
      if (cell.verdict !== "meets") assert((cell.whatToDo ?? "").length > 10, where);
      assert(!/\bsafe/i.test(JSON.stringify(cell)), where);
    }
  }
});

Deno.test("every bar of the plan has its row", () => {
  assertEquals(Object.keys(MATERIALS_AGAINST_FUEL.bars).sort(), Object.keys(MATERIALS).sort());
});

Deno.test("bare aluminium with wet alcohol is marginal: coat, flush, inspect", () => {
  for (const bar of ["6061-T6", "6082-T6", "AlSi10Mg"] as const) {
    const { E85, methanol } = MATERIALS_AGAINST_FUEL.bars[bar].fuels;
    assertEquals([E85.verdict, methanol.verdict], ["marginal", "marginal"], bar);
    assert(/Coat.*flush.*look/.test(methanol.whatToDo ?? ""), methanol.whatToDo);
    assert(/Coat.*drain.*look/.test(E85.whatToDo ?? ""), E85.whatToDo);
  }
});

Deno.test("fuels fall into the group that treats materials worst", () => {
  for (
    const [base, ethanolShare, group] of [
      ["petrol", 0, "petrol"],
      ["petrol", 0.005, "petrol"],
      ["petrol", 0.006, "E10"],
      ["petrol", 0.1, "E10"],
      ["petrol", 0.121, "E85"],
      ["petrol", 1, "E85"],
      ["methanol", 0, "methanol"],
    ] as const
  ) assertEquals(fuelGroup({ base, ethanolShare }), group, `${ethanolShare}`);
  for (const ethanolShare of [-0.01, 1.01, NaN]) {
    assertThrows(() => fuelGroup({ base: "petrol", ethanolShare }), InputError, "from 0 to 1");
  }
});

Deno.test("rings have names of their own, and grow within a section", () => {
  for (const rings of [INCH_RINGS, METRIC_RINGS]) {
    assertEquals(new Set(rings.map((r) => r.name)).size, rings.length);
    rings.forEach((ring, i) => {
      const before = rings[i - 1];
      if (before?.section.nominal_m === ring.section.nominal_m) {
        const { insideDiameter } = ring;
        assert(insideDiameter.nominal_m > before.insideDiameter.nominal_m, ring.name);
        // A larger ring is never held closer.
        const slack = (r: typeof ring) => r.insideDiameter.most_m - r.insideDiameter.nominal_m;
        assert(slack(ring) >= slack(before) - 1e-12, ring.name);
      }
    });
  }
});

Deno.test("a hole's fit at the steps of the table and beyond its ends", () => {
  const upper_um = (mm: number) => {
    const { most_m, nominal_m } = holeTolerance("H7", mm * 1e-3);
    return Math.round((most_m - nominal_m) * 1e6);
  };
  for (
    const [mm, um] of [[3, 10], [3.001, 12], [10, 15], [10.01, 18], [18, 18], [50, 25]] as const
  ) {
    assertEquals(upper_um(mm), um, `${mm}`);
  }
  for (const mm of [1, 50.1, NaN, -3]) {
    assertThrows(() => holeTolerance("H9", mm * 1e-3), InputError);
  }
});

Deno.test("a section's limits at the steps of the table", () => {
  for (
    const [mm, tolerance] of [[2.25, 0.08], [2.26, 0.09], [3.53, 0.1], [5.33, 0.13], [
      7,
      0.15,
    ]] as const
  ) {
    const { most_m, nominal_m } = sectionLimits(mm * 1e-3);
    assertEquals(Math.round((most_m - nominal_m) * 1e5) / 100, tolerance, `${mm}`);
  }
  assertThrows(() => sectionLimits(8.5e-3), InputError);
  assertThrows(() => ringOfSize(0, 3e-3), InputError);
});

Deno.test("the gap allowed shrinks with pressure, and ends where the table ends", () => {
  let last = Infinity;
  for (const pressure of [0, 1e6, 5e6, 8e6, 12e6, 20e6]) {
    const gap = gapAllowed(70, pressure) ?? NaN;
    assert(gap <= last, `${pressure}`);
    last = gap;
  }
  assertEquals(gapAllowed(70, 21e6), undefined);
  for (const pressure of [-1, NaN]) assertThrows(() => gapAllowed(90, pressure), InputError);
});
