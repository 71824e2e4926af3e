/** The order of work after the last hole: deburr, wash, inspect, prove. */
import { PARTICLE_m } from "@/lib/inspect/mod.ts";
import { formatIn } from "@/lib/units/mod.ts";
import { type Bench, idsOf, titlesOf } from "./bench.ts";
import { COMMON_PRACTICE, type TypedOperation } from "./operation.ts";

/** From the last burr to the leak test. */
export function afterTheHoles(bench: Bench): readonly TypedOperation[] {
  return [deburr(bench), wash(bench), inspect(), prove(bench)];
}

function deburr({ layout, isWelded }: Bench): TypedOperation {
  const meeting = layout.holes.filter(({ opensInto }) => opensInto.length > 0);
  return {
    id: "deburr",
    title: "Take the burr off wherever holes meet",
    does: [
      `${
        titlesOf(meeting)
      }: where each opens into the gallery, with a brush or a small flexible hone${
        isWelded ? " through the holes themselves" : " drawn through the gallery"
      }, then with a light and a mirror or a borescope.`,
      "Go through the seats and the O-ring bores last, by hand, with nothing harder than wood: no mark across them.",
    ],
    why:
      "After all holes, as each one throws a burr into those before it. A flake that comes loose later stops an injector open.",
    cautions: ["hones"],
    holes: idsOf(layout.holes),
    source: COMMON_PRACTICE,
  };
}

function wash({ layout, isWelded, gallery }: Bench): TypedOperation {
  const flush = isWelded || gallery?.exit === undefined
    ? "in at one port or pocket and out at the farthest, then the other way"
    : "from one end, then from the other";
  return {
    id: "wash",
    title: "Wash, flush both ways, dry, look",
    does: [
      `Brush every hole with warm soapy water, and flush the gallery ${flush}. Rinse with clean water, then with clean solvent.`,
      `Catch the last of it on a white cloth: nothing larger than ${
        formatIn(PARTICLE_m, "length", "µm", 0)
      } may be left, and no grey of the hone.`,
      "Dry it with clean, oil-free air at low pressure, and look through every hole against a light. Then cap all holes.",
    ],
    why: "What is left behind the main filter ends in an injector.",
    cautions: ["solvents", "compressed-air"],
    holes: idsOf(layout.holes),
    source: COMMON_PRACTICE,
  };
}

function inspect(): TypedOperation {
  return {
    id: "inspect",
    title: "Inspect, and write down what you measure",
    does: [
      "Go through the inspection points of this sheet, and let a second person repeat the bores.",
      "What is outside its limit goes into the plan as measured: the verdicts then say whether it still does.",
    ],
    why: "Clean first: a chip under the straight edge or in a bore gauge reads as an error.",
    source: COMMON_PRACTICE,
  };
}

function prove(bench: Bench): TypedOperation {
  const proof = bench.evaluation.results.proof?.pressures;
  const decides = bench.isPrinted || bench.isWelded
    ? ` ${bench.isPrinted ? "Pores of a print" : "Pores of a weld"} show nowhere else.`
    : "";
  return {
    id: "prove",
    title: "Go on to Prove, before any fuel",
    does: [
      `Take the rail through the ladder of the Prove sheet${
        proof === undefined
          ? ""
          : `, up to ${bench.say(proof.proofPressure_Pa, "pressure")} (gauge) with liquid`
      }.${decides}`,
    ],
    why: "Sizes say that it may be tight; only a test says that it is.",
    source: COMMON_PRACTICE,
  };
}
