/** Whether plugs and ports hold in their threads against the pressure. */
import { firstTouch } from "@/lib/layout/mod.ts";
import { type BlowOut, blowOut, MATERIALS } from "@/lib/strength/mod.ts";
import { PORT_SHAPES, type PortShapeId } from "@/lib/thread/mod.ts";
import type { Judged } from "../check.ts";
import type { Context } from "../context.ts";
import { CRITERIA } from "../criteria.ts";
import type { Laid, LaidOrNot } from "./laid.ts";
import { portTitle } from "./places.ts";
import { endThread } from "./rail_spec.ts";

/** A screwed plug or fitting. */
export interface PlugResults {
  /** The hole's id; a plug too narrow for its gallery has no hole. */
  readonly hole: string;
  /** What it is called. */
  readonly title: string;
  /** Its thread and seal. */
  readonly id: PortShapeId;
  /** Full thread that there is, below its mouth [m]. */
  readonly fullThread_m: number;
  /** How deep that goes from the face [m]. */
  readonly depth_m: number;
  /** How deep its standard asks for [m]. */
  readonly asked_m: number;
  /** What it bears; undefined for a taper thread, which wedges. */
  readonly blowOut: BlowOut | undefined;
}

/** Judges the plugs in the ends and the ports besides the sensor's. */
export function judgePlugs(
  context: Context,
  rail: LaidOrNot,
  proof_Pa: number | undefined,
): readonly PlugResults[] {
  const owed = [CRITERIA.plugThread, ...(hasPorts(context) ? [CRITERIA.portsThread] : [])];
  return context.subject(owed, () => {
    const { laid, because } = rail;
    if (laid === undefined || proof_Pa === undefined) {
      for (const criterion of owed) context.check(criterion, { value: undefined, because });
      return [];
    }
    const plugs = plugsOf(context, laid, proof_Pa);
    const ports = portsOf(context, laid, proof_Pa);
    judgeEnds(context, plugs);
    if (hasPorts(context)) judgePorts(context, ports);
    return [...plugs, ...ports];
  }) ?? [];
}

const isAlong = ({ face }: { readonly face?: string | undefined }): boolean =>
  face !== undefined && face !== "datum-end" && face !== "far-end";

function hasPorts({ values }: Context): boolean {
  return values.ports.holes.some(isAlong);
}

const END_HOLES = [["plug-datum", "datum-end"], ["plug-far", "far-end"]] as const;

function plugsOf(context: Context, laid: Laid, proof_Pa: number): PlugResults[] {
  const isBlind = context.values.rail.ends === "blind";
  return END_HOLES.flatMap(([hole, face]): PlugResults[] => {
    const end = isBlind && face === "far-end" ? undefined : endThread(context.values, face);
    if (end === undefined) return [];
    const isThere = laid.layout.holes.some(({ id }) => id === hole);
    const port = context.values.ports.holes.find((row) => row.face === face);
    const name = face === "datum-end" ? "datum end" : "far end";
    return [result(context, proof_Pa, {
      hole,
      title: `${port?.use === undefined ? "Plug" : portTitle(port.use)} in the ${name}`,
      id: end.id,
      ...(isThere ? threadIn(end.id, end.depth_m) : NO_THREAD),
    })];
  });
}

function portsOf(context: Context, laid: Laid, proof_Pa: number): PlugResults[] {
  const { gallery, layout, drift } = laid;
  return context.values.ports.holes.flatMap(({ use, thread }, i): PlugResults[] => {
    const hole = layout.holes.find(({ id }) => id === `port-${i + 1}`);
    if (hole === undefined || use === undefined || thread === undefined) return [];
    const first_m = firstTouch(hole, gallery, hole.thread?.major_m ?? 0, drift) ?? Infinity;
    return [result(context, proof_Pa, {
      hole: hole.id,
      title: portTitle(use),
      id: thread,
      ...threadIn(thread, Math.min(hole.thread?.to_m ?? 0, first_m)),
    })];
  });
}

const NO_THREAD = { fullThread_m: 0, depth_m: 0 } as const;

type ThreadIn = Pick<PlugResults, "fullThread_m" | "depth_m">;

/** Of a thread that is full to a depth, what lies below the O-ring's cone. */
function threadIn(id: PortShapeId, depth_m: number): ThreadIn {
  const fullThread_m = depth_m - (PORT_SHAPES[id].mouth?.deep_m ?? 0);
  return fullThread_m > 0 ? { fullThread_m, depth_m } : NO_THREAD;
}

function result(
  context: Context,
  proof_Pa: number,
  part: Omit<PlugResults, "asked_m" | "blowOut">,
): PlugResults {
  const shape = PORT_SHAPES[part.id];
  const isParallel = shape.seal !== "taper";
  return {
    ...part,
    asked_m: shape.fullThread_m,
    blowOut: isParallel && part.fullThread_m > 0
      ? blowOut(context.working, `plugs.${part.hole}`, {
        pressure_Pa: proof_Pa,
        sealDiameter_m: shape.mouth?.wide_m ?? shape.flat_m ?? shape.nominal_m,
        thread: shape.thread,
        fullThread_m: part.fullThread_m,
        shearStrength_Pa: MATERIALS[context.values.rail.material].shear_Pa,
      })
      : undefined,
  };
}

/** How far a thread is past what is asked, so that unlike ones can be ranked [-]. */
function rankOf({ blowOut, depth_m, asked_m }: PlugResults): number {
  return Math.min((blowOut?.factor ?? 0) / CRITERIA.plugThread.aim, depth_m / asked_m);
}

function judgeEnds(context: Context, plugs: readonly PlugResults[]): void {
  const { ends } = context.values.rail;
  const wide = plugs.find(({ fullThread_m }) => fullThread_m === 0);
  if (wide !== undefined) {
    context.check(CRITERIA.plugThread, {
      value: 0,
      because: `The gallery is wider than the tapping drill of ${
        PORT_SHAPES[wide.id].title
      }: take a bigger thread or a smaller gallery.`,
    });
    return;
  }
  if (ends !== "welded" && plugs.length === 0) {
    context.check(CRITERIA.plugThread, {
      value: undefined,
      because: "Choose the thread of the plugs: no usual one is as wide as this gallery.",
    });
    return;
  }
  const worst = worstOf(plugs);
  context.check(CRITERIA.plugThread, {
    ...(worst === undefined
      ? { value: CRITERIA.plugThread.aim, atBest: "marginal" as const }
      : measured(worst)),
    because: worst === undefined
      ? "Caps are welded on: weld before the last drilling, and prove the welds with the rail."
      : said(context, worst),
  });
}

function judgePorts(context: Context, ports: readonly PlugResults[]): void {
  const worst = worstOf(ports);
  context.check(CRITERIA.portsThread, {
    ...(worst === undefined ? { value: undefined } : measured(worst)),
    because: worst === undefined ? "No port could be laid out." : said(context, worst),
  });
}

function worstOf(list: readonly PlugResults[]): PlugResults | undefined {
  return list.toSorted((a, b) => rankOf(a) - rankOf(b))[0];
}

/** A taper thread wedges, so it goes by its length, and is at best marginal. */
function measured(part: PlugResults): Omit<Judged, "because"> {
  const { blowOut, fullThread_m, depth_m, asked_m } = part;
  if (fullThread_m <= 0) return { value: 0 };
  if (blowOut === undefined) {
    return { value: depth_m / asked_m, limit: 1, aim: 1, atBest: "marginal" };
  }
  return {
    value: blowOut.factor,
    ...(depth_m < asked_m && { atBest: "marginal" }),
    result: `plugs.${part.hole}.againstPressure.factor`,
  };
}

function said(
  context: Context,
  { title, id, fullThread_m, depth_m, asked_m, blowOut }: PlugResults,
): string {
  const say = context.say.bind(context);
  const thread = `${title}, ${PORT_SHAPES[id].title}: ${
    say(fullThread_m, "length")
  } of full thread`;
  if (fullThread_m <= 0) {
    return `${thread} before the gallery opens. Take a thicker wall or an end port.`;
  }
  const less = depth_m < asked_m
    ? ` It is full to ${say(depth_m, "length")}; its standard asks for ${say(asked_m, "length")}.`
    : "";
  return blowOut === undefined
    ? `${thread}; a taper thread wedges a thin wall apart: a straight thread with an O-ring is the better choice.${less}`
    : `${thread} hold ${say(blowOut.strippingLoad_N, "force")}; pressure pushes with ${
      say(blowOut.force_N, "force")
    }. Tightening usually pulls more: keep to the fitting's torque.${less}`;
}
