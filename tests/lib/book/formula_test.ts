/** Holds every displayed formula against the code, by mathjs with units. */
import { assert, assertEquals } from "@std/assert";
import { InputError } from "@/lib/basics/mod.ts";
import { BOOK } from "@/lib/book/mod.ts";
import type { AnyMethod, MethodInput } from "@/lib/method/mod.ts";
import { evaluateFormula, formulaNames, formulaToTex, unitsReady } from "@/lib/units/mod.ts";

await unitsReady();

const METHODS = BOOK.flatMap((c) => c.methods);

/** Methods without a closed form, by name: each says in words what is done instead. */
const WITHOUT_FORMULA: readonly string[] = ["colebrook-friction"];

/** Sets of inputs compared for each method, and the most that are tried to find so many. */
const COMPARED = 40;
const TRIES = 2000;

Deno.test("methods without a formula are those listed, and at most one in ten", () => {
  const without = METHODS.filter((m) => m.formula === null).map((m) => m.id);
  assertEquals(without.toSorted(), WITHOUT_FORMULA.toSorted());
  assert(without.length * 10 <= METHODS.length, `${without.length} of ${METHODS.length}`);
});

Deno.test("a method without a formula says in words what it does", () => {
  for (const m of METHODS) if (m.formula === null) assert((m.words ?? "").length > 20, m.id);
});

Deno.test("ids are unique and fit for an address", () => {
  assertEquals(new Set(METHODS.map((m) => m.id)).size, METHODS.length);
  for (const m of METHODS) assert(/^[a-z0-9]+(-[a-z0-9]+)*$/.test(m.id), m.id);
});

Deno.test("every method names its source and what its numbers mean", () => {
  for (const m of METHODS) {
    assert(m.source.length > 5, `${m.id} has no source`);
    for (const [name, input] of Object.entries<MethodInput>(m.inputs)) {
      assert(input.says.length > 3, `${m.id}: ${name} says nothing`);
      assert(input.min <= input.max && Number.isFinite(input.max), `${m.id}: range of ${name}`);
    }
  }
});

for (const m of METHODS) {
  if (m.formula === null) continue;
  const formula = m.formula;
  Deno.test(`the formula shown for ${m.id} is what its code computes`, () => {
    assertEquals(
      formulaNames(formula).filter((n) => !(n in m.inputs)),
      [],
      "names in the formula that are no inputs",
    );
    let compared = 0;
    const random = generator(hash(m.id));
    for (let i = 0; i < TRIES && compared < COMPARED; i++) {
      const inputs = randomInputs(m, random);
      const coded = resultOf(m, inputs);
      if (coded === undefined) continue; // outside what the method allows, which it says itself
      const units = Object.fromEntries(
        Object.entries<MethodInput>(m.inputs).map((
          [name, { unit }],
        ) => [name, { value: inputs[name] as number, unit }]),
      );
      const shown = evaluateFormula(formula, units, { unit: m.output.unit }, m.fit ?? false);
      const scale = Math.max(Math.abs(coded), Math.abs(shown), Number.MIN_VALUE);
      assert(
        Math.abs(coded - shown) <= 1e-9 * scale || Math.abs(coded - shown) < 1e-300,
        `code ${coded}, formula ${shown} at ${JSON.stringify(inputs)}`,
      );
      compared++;
    }
    assertEquals(compared, COMPARED, `random inputs in its range, of ${TRIES} tried`);
  });
  Deno.test(`the formula of ${m.id} can be printed`, () => {
    assert(formulaToTex(formula, {}).length > 0);
  });
}

function resultOf(m: AnyMethod, inputs: Record<string, number>): number | undefined {
  try {
    return m(inputs);
  } catch (error) {
    if (error instanceof InputError) return undefined;
    throw error;
  }
}

/** Inputs spread over their ranges; by ratio where a range spans decades, whole where the unit says so. */
function randomInputs(m: AnyMethod, random: () => number): Record<string, number> {
  return Object.fromEntries(
    Object.entries<MethodInput>(m.inputs).map(([name, { min, max }]) => {
      const share = 0.001 + 0.998 * random();
      if (min > 0 && max / min > 100) return [name, min * (max / min) ** share];
      if (min === 0 && max > 1e3) return [name, max * 10 ** (-6 * (1 - share))];
      return [name, min + (max - min) * share];
    }),
  );
}

/** Mulberry32: small, seeded, good enough to spread test inputs. */
function generator(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = state;
    t = Math.imul(t ^ (t >>> 15), t | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return ((t ^ (t >>> 14)) >>> 0) / 2 ** 32;
  };
}

function hash(text: string): number {
  let h = 2166136261;
  for (const c of text) h = Math.imul(h ^ c.charCodeAt(0), 16777619);
  return h;
}
