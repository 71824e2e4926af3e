/** The Drill step as a whole: the rail laid out, and all that is judged of it. */
import { InputError } from "@/lib/basics/mod.ts";
import type { Layout } from "@/lib/layout/mod.ts";
import type { Context } from "../context.ts";
import type { BarResults } from "../subjects/bar.ts";
import type { PortResults } from "../subjects/port.ts";
import { judgeClearance } from "./clearance.ts";
import { type FitnessResults, judgeFitness } from "./fitness.ts";
import { type FloatResults, judgeFloat } from "./float.ts";
import { type HeldResults, judgeHeld } from "./held.ts";
import { type HoleResults, judgeHoles } from "./holes.ts";
import { type LaidOrNot, layPlan } from "./laid.ts";
import { judgePlugs, type PlugResults } from "./plugs.ts";
import { judgeSeal, type SealResults } from "./pocket_seal.ts";
import { judgeStack, type StackResults } from "./stack.ts";

/** What was found for the Drill step. */
export interface DrillResults {
  /** The rail with all its holes; undefined until bar and gallery are known, or if they make none. */
  readonly layout: Layout | undefined;
  /** Why there is no layout; undefined where there is one. */
  readonly noLayout: string | undefined;
  /** How far the gallery's drill may wander [m]. */
  readonly drift_m: number | undefined;
  /** What is left between holes and around them. */
  readonly holes: readonly HoleResults[] | undefined;
  /** The O-rings in their pockets. */
  readonly seal: SealResults | undefined;
  /** How the injectors stand. */
  readonly stack: StackResults | undefined;
  /** The bosses, and what play is left. */
  readonly float: FloatResults | undefined;
  /** The screws. */
  readonly held: HeldResults | undefined;
  /** Plugs and ports in their threads. */
  readonly plugs: readonly PlugResults[];
  /** What touches the fuel. */
  readonly fitness: FitnessResults | undefined;
}

/** What other subjects found before. */
export interface BeforeDrill {
  /** Wall, drift and forces. */
  readonly bar: BarResults | undefined;
  /** The sensor's port. */
  readonly port: PortResults | undefined;
  /** Proof pressure [Pa, gauge]. */
  readonly proof_Pa: number | undefined;
}

/** Lays the rail out and judges it. */
export function judgeDrill(
  context: Context,
  { bar, port, proof_Pa }: BeforeDrill,
): DrillResults {
  const seal = judgeSeal(context);
  const rail = lay(context, bar, port, seal);
  const holes = judgeHoles(context, rail);
  const stack = judgeStack(context, rail, seal);
  const float = judgeFloat(context);
  judgeClearance(context);
  const held = judgeHeld(context, bar);
  const plugs = judgePlugs(context, rail, proof_Pa);
  const fitness = judgeFitness(context);
  const layout = rail.laid?.layout;
  const drift_m = rail.laid?.drift.drift_m;
  return {
    layout,
    noLayout: layout === undefined ? rail.because : undefined,
    drift_m,
    holes,
    seal,
    stack,
    float,
    held,
    plugs,
    fitness,
  };
}

/** Lays the rail out. Why that can't be done is kept for the checks that need it. */
function lay(
  context: Context,
  bar: BarResults | undefined,
  port: PortResults | undefined,
  seal: SealResults | undefined,
): LaidOrNot {
  const missing = "Enter the bore of the gallery and the size of the bar.";
  if (bar === undefined || seal === undefined) return { laid: undefined, because: missing };
  try {
    const found = { port, leadMouth_m: seal.leadMouth_m };
    return { laid: layPlan(context.values, found, bar.drift_m), because: missing };
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    return { laid: undefined, because: `${error.message}.` };
  }
}
