/** Injectors of another size, and injectors that open faster or repeat shorter pulses. */
import type { Kind } from "@/lib/units/mod.ts";
import type { CheckId, Lever } from "../lever.ts";
import { type Direction, stepped } from "../stepped.ts";

/** The stages that a plan may have. */
const STAGES = [0, 1, 2] as const;

const DUTY: readonly CheckId[] = ["duty-peak", "duty-maximum"];

/** One figure of an injector that a lever moves. */
interface Moved {
  readonly id: string;
  readonly name: string;
  readonly what: string;
  readonly field: string;
  readonly to: Direction;
  readonly kind: Kind;
  readonly size: number;
  readonly unit: string;
  readonly mends: readonly CheckId[];
  readonly most: number;
  /** The stages whose figure it is. */
  readonly stages: readonly number[];
}

const MOVED: readonly Moved[] = [
  {
    id: "injector-flow",
    name: "larger injectors",
    what: "Injectors, static flow of one",
    field: "flow",
    to: "up",
    kind: "flow",
    size: 10,
    unit: "cc/min",
    mends: DUTY,
    most: 300,
    stages: STAGES,
  },
  {
    id: "injector-dead-time",
    name: "injectors that open faster",
    what: "Injectors, dead time",
    field: "deadTime",
    to: "down",
    kind: "duration",
    size: 0.05,
    unit: "ms",
    mends: DUTY,
    most: 60,
    stages: STAGES,
  },
  {
    id: "injector-less-flow",
    name: "smaller injectors",
    what: "Injectors, static flow of one",
    field: "flow",
    to: "down",
    kind: "flow",
    size: 10,
    unit: "cc/min",
    mends: ["idle-pulse"],
    most: 300,
    stages: [0],
  },
  {
    id: "injector-smallest-pulse",
    name: "injectors that repeat shorter pulses",
    what: "Injectors, smallest repeatable pulse",
    field: "smallestPulse",
    to: "down",
    kind: "duration",
    size: 0.05,
    unit: "ms",
    mends: ["idle-pulse"],
    most: 60,
    stages: [0],
  },
];

/** Everything about injectors, stage by stage. */
export const INJECTOR_LEVERS: readonly Lever[] = MOVED.flatMap(
  ({ id, name, what, field, to, size, unit, mends, most, stages }) =>
    stages.map((stage): Lever => {
      const lever = (of: string): Lever =>
        stepped({
          id: `${id}-${stage + 1}`,
          name: `${name}${of}`,
          what: `${what}${of}`,
          path: `injectors.stages.${stage}.${field}`,
          mends,
          to,
          most,
          steps: { metric: { size, unit }, inch: { size, unit } },
        });
      return {
        // Nearly every plan has one stage; where there are more, the edit says which.
        ...lever(stage === 0 ? "" : ` (stage ${stage + 1})`),
        candidates: (start) =>
          lever(start.values.injectors.stages.length > 1 ? ` (stage ${stage + 1})` : "")
            .candidates(start),
      };
    }),
);
