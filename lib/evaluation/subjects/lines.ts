/** How fast the fuel runs in the runs, and what the filters lose. */
import { meanVelocity } from "@/lib/flow/mod.ts";
import { isDuct, type Piece, type Run } from "@/lib/line/mod.ts";
import type { Context } from "../context.ts";
import type { Criterion } from "../check.ts";
import { CRITERIA } from "../criteria.ts";
import { type RecordedCost, recordRun } from "../supply/record_run.ts";
import { pointOf, type SolvedSupply } from "../supply/solved.ts";
import { branchesOf } from "../supply/ways.ts";
import type { DemandResults } from "./demand.ts";

/** Velocities in the narrowest hose of each run [m/s]; undefined where there is no such run. */
export interface LineResults {
  /** From pump to rail, branches included, at full power [m/s]. */
  readonly feedVelocity_m_s: number | undefined;
  /** From tank to pump, at full power [m/s]. */
  readonly suctionVelocity_m_s: number | undefined;
  /** From regulator to tank, engine idling [m/s]. */
  readonly returnVelocity_m_s: number | undefined;
  /** Lost in the filter that loses most, clean, at full power [Pa]. */
  readonly filterLoss_Pa: number | undefined;
  /** Pieces in which the flow is neither laminar nor turbulent, and the bounds of what they lose. */
  readonly unsettled: readonly Unsettled[];
}

/** A piece between the regimes. */
export interface Unsettled {
  /** Which run and piece. */
  readonly name: string;
  /** As laminar flow [Pa]. */
  readonly low_Pa: number;
  /** As turbulent flow [Pa]. */
  readonly high_Pa: number;
}

/** Judges velocities and filters. */
export function judgeLines(
  context: Context,
  demand: DemandResults,
  solved: SolvedSupply,
): LineResults | undefined {
  const { supply } = solved;
  const { suction, feed, back, regulator } = supply.system;
  const owed = [
    CRITERIA.feedVelocity,
    CRITERIA.filterLoss,
    ...(suction ? [CRITERIA.suctionVelocity] : []),
    ...(back ? [CRITERIA.returnVelocity] : []),
  ];
  return context.subject(owed, () => {
    const peak = pointOf(solved, "peak")?.state;
    const idle = pointOf(solved, "idle")?.state;
    const burnt: Stream = { flow_m3_s: demand.fuelVolume_m3_s, from: "what the engine burns" };
    const pumped: Stream = peak === undefined
      ? burnt
      : { flow_m3_s: Math.max(peak.pumped_m3_s, burnt.flow_m3_s), from: streamOf(solved) };
    const inFeed = regulator.place === "tank" ? burnt : pumped;
    const lost = recordRun(context, "lines.feed", feed, inFeed.flow_m3_s);
    const { branch } = supply.system;
    const inBranch = branchStream(context, regulator.place === "rail" ? pumped : burnt);
    const returned = idle && { flow_m3_s: idle.returned_m3_s, from: "what goes back at idle" };
    const all: Readonly<Record<string, readonly RecordedCost[]>> = {
      suction: suction ? recordRun(context, "lines.suction", suction, pumped.flow_m3_s) : [],
      feed: lost,
      branch: branch ? recordRun(context, "lines.branch", branch, inBranch.flow_m3_s) : [],
      return: back && returned ? recordRun(context, "lines.return", back, returned.flow_m3_s) : [],
    };
    return {
      feedVelocity_m_s: velocity(context, CRITERIA.feedVelocity, [
        ...through(feed, inFeed, context.values.supply.feedBore),
        ...through(branch, inBranch),
      ]),
      suctionVelocity_m_s: suction &&
        velocity(context, CRITERIA.suctionVelocity, through(suction, pumped)),
      returnVelocity_m_s: back && velocity(
        context,
        CRITERIA.returnVelocity,
        solved.isPumpKnown && returned ? through(back, returned) : undefined,
      ),
      filterLoss_Pa: judgeFilter(context, solved, lost, inFeed),
      unsettled: Object.entries(all).flatMap(([run, costs]) =>
        costs.flatMap(({ piece, bounds }) =>
          bounds ? [{ name: `${piece.name} of the ${run}`, ...bounds }] : []
        )
      ),
    };
  });
}

/** A flow and what it is. */
interface Stream {
  readonly flow_m3_s: number;
  readonly from: string;
}

function streamOf({ isPumpKnown }: SolvedSupply): string {
  return isPumpKnown ? "all that the pump gives" : "what the pump to shop for gives";
}

/** What runs in one branch of several. */
function branchStream({ values }: Context, { flow_m3_s, from }: Stream): Stream {
  const branches = branchesOf(values);
  return {
    flow_m3_s: flow_m3_s / branches,
    from: branches === 1 ? `${from}, in the branch` : `${from}, shared by ${branches} branches`,
  };
}

/** A bore and what runs through it. */
interface Bore {
  readonly bore_m: number;
  readonly stream: Stream;
}

/** The narrowest hose or tube of a run; without one the bore that stands in, if any. */
function through(run: Run | undefined, stream: Stream, otherwise_m?: number): Bore[] {
  const bores = run?.pieces.filter(({ kind }) => isDuct(kind)).map(({ bore_m }) => bore_m) ?? [];
  const bore_m = bores.length > 0 ? Math.min(...bores) : otherwise_m;
  return bore_m === undefined ? [] : [{ bore_m, stream }];
}

/** Judges the bore in which it runs fastest; undefined bores wait for the pump's curve. */
function velocity(
  context: Context,
  criterion: Criterion,
  bores: readonly Bore[] | undefined,
): number | undefined {
  if (bores === undefined) {
    const because = "Nearly all of the pump's flow goes back at idle: enter its curve.";
    context.check(criterion, { value: undefined, because });
    return undefined;
  }
  const speed = ({ bore_m, stream }: Bore): number => stream.flow_m3_s / bore_m ** 2;
  const fastest = bores.toSorted((a, b) => speed(b) - speed(a))[0];
  if (fastest === undefined) {
    context.check(criterion, { value: undefined, because: "No hose or tube of it is listed." });
    return undefined;
  }
  const { bore_m: bore, stream: { flow_m3_s: flow, from } } = fastest;
  const result = `lines.${criterion.id}_m_s`;
  const value = context.working.run(result, meanVelocity, { flow, bore });
  context.check(criterion, {
    value,
    because: `${context.say(flow, "pumpFlow")} (${from}) through ${context.say(bore, "length")}.`,
    result,
  });
  return value;
}

function judgeFilter(
  context: Context,
  { supply }: SolvedSupply,
  lost: readonly RecordedCost[],
  stream: Stream,
): number | undefined {
  const filters = lost.filter(({ piece }) => piece.kind === "filter");
  const { feed } = supply.system;
  const isUnstated = (piece: Piece): boolean => feed.unstated.includes(piece);
  const lacking = filters.find(({ piece }) => isUnstated(piece));
  const worst = filters.toSorted((a, b) => b.lost_Pa - a.lost_Pa)[0];
  if (lacking !== undefined || worst === undefined) {
    const isMeasured = feed.pieces.some(({ name }) => name === "feed, as measured");
    context.check(CRITERIA.filterLoss, {
      value: undefined,
      because: lacking !== undefined
        ? "Enter a flow and the loss there, as its maker states them, for the filter in the feed."
        : isMeasured
        ? "The loss of the feed was measured as a whole: list its pieces to see the filter's."
        : "No filter is listed in the feed: dirt that passes it ends in an injector. List it.",
    });
    return undefined;
  }
  const value = worst.lost_Pa;
  context.check(CRITERIA.filterLoss, {
    value,
    because: `${context.say(stream.flow_m3_s, "pumpFlow")} (${stream.from}) run through it.`,
    ...(worst.result !== undefined && { result: worst.result }),
  });
  return value;
}
