/** Thicker wires and fuses that fit. */
import { BLADE_FUSES_A, fuseFor, nextWire, WIRES, type WireSize } from "@/lib/wiring/mod.ts";
import { fieldAt } from "@/lib/plan/mod.ts";
import type { Answer } from "../answers.ts";
import { type Answered, candidate, type Edit, edited, type Lever } from "../lever.ts";
import { type Start, textAt } from "../start.ts";
import { stepped } from "../stepped.ts";

const WIRE = "wiring.wire";
const FUSE = "wiring.fuse";

/** The thicker wires of the same family that the plan takes, the next first. */
function thicker({ values }: Start): WireSize[] {
  const field = fieldAt(WIRE);
  const found: WireSize[] = [];
  let wire: WireSize | undefined = values.wiring.wire;
  while (wire !== undefined) {
    wire = nextWire(wire);
    if (wire && field?.type === "choice" && wire in field.options) found.push(wire);
  }
  return found;
}

/** Another wire; what was measured or stated of the old one says nothing of it. */
function withWire(start: Start, wire: WireSize): Answered {
  const field = fieldAt(WIRE);
  const said = field?.type === "choice" ? field.options[wire] ?? wire : wire;
  const { pump, wiring } = start.values;
  const answers: Record<string, Answer> = { [WIRE]: wire };
  const edits: Edit[] = [edited(start, WIRE, said)];
  if (pump.wireLoss !== undefined) {
    answers["pump.wireLoss"] = undefined;
    edits.push(blank(start, "pump.wireLoss", "Measured loss of the wiring"));
  }
  if (wiring.rating !== undefined) {
    answers["wiring.rating"] = undefined;
    edits.push(blank(start, "wiring.rating", "Stated rating of the wire"));
  }
  return { answers, edits };
}

function blank(start: Start, path: string, what: string): Edit {
  return { what, from: textAt(start, path), to: "blank, as it was the old wire's", path };
}

function withFuse(start: Start, rating_A: number): Answered {
  const text = `${rating_A} A`;
  return { answers: { [FUSE]: text }, edits: [edited(start, FUSE, text)] };
}

function both(a: Answered, b: Answered): Answered {
  return { answers: { ...a.answers, ...b.answers }, edits: [...a.edits, ...b.edits] };
}

/** Everything about wires and fuses. */
export const WIRING_LEVERS: readonly Lever[] = [
  {
    id: "wire",
    name: "a thicker wire",
    mends: ["wire-loss", "fuse", "pump-margin", "pressure-held", "cranking-held"],
    candidates: (start) => thicker(start).map((wire) => candidate(start, withWire(start, wire))),
  },
  {
    id: "fuse",
    name: "another fuse",
    mends: ["fuse"],
    tries: "each",
    candidates(start) {
      const now = start.values.wiring.fuse;
      if (now === undefined) return [];
      return BLADE_FUSES_A.filter((rating_A) => rating_A !== now)
        .toSorted((a, b) => Math.abs(a - now) - Math.abs(b - now))
        .map((rating_A) => candidate(start, withFuse(start, rating_A)));
    },
  },
  {
    id: "wire-and-fuse",
    name: "a thicker wire with its fuse",
    mends: ["fuse", "wire-loss"],
    tries: "each",
    candidates(start) {
      const current_A = start.evaluation.results.wiring?.mostCurrent_A;
      if (current_A === undefined || start.values.wiring.fuse === undefined) return [];
      return thicker(start).flatMap((wire) => {
        const fuse = fuseFor(current_A, WIRES[wire].rating_A);
        if (!fuse?.protectsWire || fuse.rating_A === start.values.wiring.fuse) return [];
        return candidate(start, both(withWire(start, wire), withFuse(start, fuse.rating_A)));
      });
    },
  },
  stepped({
    id: "contacts",
    name: "better contacts",
    what: "Loss in relay, fuse and connectors",
    mends: ["wire-loss"],
    path: "wiring.contacts",
    to: "down",
    steps: { metric: { size: 0.05, unit: "V" }, inch: { size: 0.05, unit: "V" } },
  }),
];
