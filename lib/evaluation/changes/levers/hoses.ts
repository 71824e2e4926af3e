/** Larger hoses, run by run. */
import { type DashSize, hoseBore, HOSES, isDuct, isStated } from "@/lib/line/mod.ts";
import { type RunName, type Typed } from "@/lib/plan/mod.ts";
import type { PlanValues } from "@/lib/plan/mod.ts";
import { formatQuantity } from "@/lib/units/mod.ts";
import { type Answer, answerAt, put } from "../answers.ts";
import { type Candidate, candidate, type CheckId, type Edit, type Lever } from "../lever.ts";
import { rowsAt, type Start, textAt } from "../start.ts";

/** Each run with what its bore bears on. */
const MENDS: Readonly<Record<RunName, readonly CheckId[]>> = {
  feed: [
    "feed-velocity",
    "pump-margin",
    "pressure-held",
    "cranking-held",
    "duty-peak",
    "duty-maximum",
  ],
  branch: [
    "feed-velocity",
    "pump-margin",
    "pressure-held",
    "cranking-held",
    "duty-peak",
    "duty-maximum",
  ],
  crossover: ["pressure-held", "rail-spread"],
  return: ["return-velocity", "return-back-pressure", "pressure-held", "cranking-held"],
  suction: ["suction-velocity", "inlet-vapour", "pump-margin"],
  lift: ["lift-margin"],
};

/** What the hose of each run is called. */
const NAMES: Readonly<Record<RunName, string>> = {
  feed: "Feed hose",
  branch: "Branch hoses",
  crossover: "Crossover hose",
  return: "Return hose",
  suction: "Suction hose",
  lift: "Lift hose",
};

/** A lever for each run. */
export const HOSE_LEVERS: readonly Lever[] = (Object.keys(MENDS) as RunName[]).map((run) => ({
  id: `hose-${run}`,
  name: `a larger ${NAMES[run].toLowerCase()}`,
  mends: MENDS[run],
  candidates: (start) => larger(start, run),
}));

/** A hose as it is sold. */
interface Hose {
  readonly dash: DashSize;
  readonly bore_m: number;
}

/** The run with all that is narrower than the next sizes of the plan's family brought up to them. */
function larger(start: Start, run: RunName): Candidate[] {
  const narrowest_m = narrowest(start.values, run);
  if (narrowest_m === undefined) return [];
  const { bores_m } = HOSES[start.values.supply.hoseFamily];
  return (Object.entries(bores_m) as [DashSize, number][])
    .filter(([, bore_m]) => bore_m > narrowest_m * (1 + SAME))
    .toSorted(([, a], [, b]) => a - b)
    .map(([dash, bore_m]) => withHose(start, run, { dash, bore_m }, narrowest_m));
}

/** Share by which a size typed in another unit may differ from itself [-]. */
const SAME = 1e-3;

/** The bore of the narrowest hose or tube of a run [m]; undefined where there is no such run. */
function narrowest(values: PlanValues, run: RunName): number | undefined {
  const { supply } = values;
  const ofRun_m = supply[`${run}Bore`];
  const rows = supply[run];
  if (ofRun_m === undefined) return undefined;
  if (rows.length === 0) return run === "feed" ? ofRun_m : undefined;
  const ducts = rows.filter(({ piece }) => piece !== undefined && isDuct(piece));
  const bores_m = ducts.map(({ bore, size }) =>
    bore ?? (size && hoseBore(supply.hoseFamily, size)) ?? ofRun_m
  );
  return Math.min(...bores_m.length > 0 ? bores_m : [ofRun_m]);
}

/** Pieces that say their size take the new one, where they are narrower; the others follow the run's bore. */
function withHose(start: Start, run: RunName, hose: Hose, narrowest_m: number): Candidate {
  const { supply } = start.values;
  const { dash, bore_m } = hose;
  const path = `supply.${run}`;
  const borePath = `${path}Bore`;
  const answers: Record<string, Answer> = {};
  const edits: Edit[] = [];
  const to = `${dash} (${sizeText(bore_m, start)})`;
  const from = sizeOf(narrowest_m, start);
  let at: string | undefined;
  if (Array.isArray(answerAt(start.plan, path))) {
    const { rows, pathOf } = rowsAt(start, path);
    let isChanged = false;
    answers[path] = rows.map((row, i): Typed => {
      const { piece, bore, size } = supply[run][i] ?? {};
      const own_m = bore ?? (size && hoseBore(supply.hoseFamily, size));
      if (piece === undefined || isStated(piece) || own_m === undefined || own_m >= bore_m) {
        return row;
      }
      at ??= pathOf(i, bore === undefined ? "size" : "bore");
      isChanged = true;
      return put(put(row, "bore", undefined), "size", dash);
    });
    if (!isChanged) delete answers[path];
  }
  if ((supply[`${run}Bore`] ?? 0) < bore_m * (1 - SAME)) {
    answers[borePath] = boreText(bore_m, start);
    at ??= borePath;
  }
  edits.push({ what: NAMES[run], from, to, path: at ?? borePath });
  if (run === "feed" && supply.feedLoss !== undefined) {
    answers["supply.feedLoss"] = undefined;
    edits.push(measuredOnOld(start));
  }
  return candidate(start, { answers, edits });
}

/** What was measured on the old hose says nothing of the new one. */
function measuredOnOld(start: Start): Edit {
  const path = "supply.feedLoss";
  return {
    what: "Measured loss of the feed",
    from: textAt(start, path),
    to: "blank, as it was the old hose's",
    path,
  };
}

/** A bore as a dash size where it is one of the family, else as a length. */
function sizeOf(bore_m: number, start: Start): string {
  const { bores_m } = HOSES[start.values.supply.hoseFamily];
  const dash = Object.entries(bores_m).find(([, of_m]) => Math.abs(of_m - bore_m) <= SAME * of_m);
  const text = sizeText(bore_m, start);
  return dash === undefined ? text : `${dash[0]} (${text})`;
}

function sizeText(bore_m: number, { system }: Start): string {
  return formatQuantity(Number(bore_m.toFixed(7)), "length", system);
}

/** As it is typed: exact to a hundredth of a millimetre. */
function boreText(bore_m: number, { system }: Start): string {
  return system === "metric"
    ? `${Number((bore_m * 1e3).toFixed(3))} mm`
    : `${Number((bore_m / 0.0254).toFixed(4))} in`;
}
