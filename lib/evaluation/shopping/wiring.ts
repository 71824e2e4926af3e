/** Wire, fuse, relay and impact cut-off of the pump. */
import { SECTIONS } from "@/lib/plan/mod.ts";
import { BLADE_FUSES_A, FUSE_FACTOR, leastFuse, WIRES } from "@/lib/wiring/mod.ts";
import { CRITERIA } from "../criteria.ts";
import { atLeast, exactly, pieces, sumOf, type Wanted } from "./item.ts";
import type { Shop } from "./shop.ts";

/** What the parts have to carry, and what is not known of it. */
interface Load {
  /** Rating of the fuse, the least there has to be where none is settled [A]. */
  readonly carries_A: number;
  /** Rating of a fuse that fits pump and wire; undefined where none does or the pump is not chosen [A]. */
  readonly fuse_A: number | undefined;
  /** Why no fuse is settled. */
  readonly missing: readonly string[];
}

/** What stands between the battery and an electric pump; nothing where the engine drives it. */
export function wantedWiring(shop: Shop): Wanted[] {
  const { values, evaluation } = shop;
  if (values.pump.drive === "engine") return [];
  const found = evaluation.results.wiring;
  if (found === undefined) {
    const missing = [`Current: ${shop.because(CRITERIA.wireLoss)}`];
    return [{ id: "wire", what: "Wire, fuse and relay of the pump", missing, from: [] }];
  }
  const load = loadOf(shop, leastFuse({ current: found.mostCurrent_A, factor: FUSE_FACTOR }));
  const { count } = values.pump;
  return [
    ...wire(shop, load),
    {
      id: "fuse",
      what: "Blade fuse with its holder",
      quantity: pieces(count),
      figures: load.fuse_A === undefined
        ? [atLeast("rating", load.carries_A, "current")]
        : [exactly("rating", load.fuse_A, "current")],
      missing: load.missing,
      because: `The pump draws up to ${
        shop.say(found.mostCurrent_A, "current")
      }; a fuse carries ${FUSE_FACTOR} times that and at most what the wire bears.`,
      from: ["wiring.wire", ...currentFrom(shop)],
    },
    switched("relay", "Relay for the pump", count, load.carries_A),
    // One cut-off stops all pumps.
    switched("cut-off", "Impact (inertia) cut-off in the pump's wiring", 1, count * load.carries_A),
  ];
}

function loadOf(shop: Shop, least_A: number): Load {
  const none = (missing: string): Load => ({
    carries_A: least_A,
    fuse_A: undefined,
    missing: [missing],
  });
  if (shop.evaluation.results.supply?.isPumpKnown !== true) {
    return none(
      "Rating: the current is estimated until a pump is chosen; go by what the pump you buy draws.",
    );
  }
  const fuse_A = fuseOf(shop);
  if (fuse_A !== undefined) return { carries_A: fuse_A, fuse_A, missing: [] };
  return none(
    least_A > (BLADE_FUSES_A.at(-1) ?? 0)
      ? "Rating: no blade fuse is so large; ask for a bolted one."
      : "Rating: no blade fuse carries the pump and protects this wire; take a thicker wire.",
  );
}

/** The plan's own fuse where it is right, else the one that would be. */
function fuseOf({ evaluation, values }: Shop): number | undefined {
  const isRight = evaluation.checks.some(({ id, verdict }) =>
    id === CRITERIA.fuse.id && verdict === "meets"
  );
  return isRight ? values.wiring.fuse : evaluation.results.wiring?.fuse_A;
}

/** Where no current is given it follows from the efficiency. */
function currentFrom({ values }: Shop): string[] {
  return values.pump.points.some(({ current }) => current !== undefined) ? [] : ["pump.efficiency"];
}

function switched(id: string, what: string, count: number, carries_A: number): Wanted {
  return {
    id,
    what,
    quantity: pieces(count),
    figures: [atLeast("contacts carry", carries_A, "current")],
    because: "At least what the fuse is rated, for a motor: common practice, no source.",
    from: [],
  };
}

function wire(shop: Shop, { carries_A }: Load): Wanted[] {
  const { wire, outLength, returnLength, temperature } = shop.values.wiring;
  if (wire === undefined) return [];
  const { count } = shop.values.pump;
  const shares = [
    { place: "battery to pump", times: count, each: outLength ?? 0 },
    { place: "pump back to battery", times: count, each: returnLength ?? 0 },
  ].filter(({ each }) => each > 0);
  return [{
    id: "wire",
    what: `Copper wire, ${SECTIONS.wiring.fields.wire.options[wire]}`,
    quantity: { unit: "length", value_m: sumOf(shares) },
    figures: [
      atLeast("copper", WIRES[wire].area_m2, "area", "mm²"),
      atLeast("bears in a loom", carries_A, "current"),
      ...(temperature === undefined
        ? []
        : [atLeast("insulation bears", temperature, "temperature")]),
    ],
    shares,
    because: "Where the body carries the current back, less wire is needed than is counted for it.",
    from: [
      "wiring.wire",
      "wiring.outLength",
      "wiring.returnLength",
      "wiring.temperature",
      ...currentFrom(shop),
    ],
  }];
}
