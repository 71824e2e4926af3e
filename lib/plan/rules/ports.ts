/** What must hold within the rows of the ports. */
import type { Fault } from "../fault.ts";
import { threadWidth } from "../port_threads.ts";
import type { PlanValues } from "../sections.ts";
import { breadthOf, holeFaults, placeInWords, twice } from "./holes.ts";
import { fault, type Rule, type Say } from "./rule.ts";

type Port = PlanValues["ports"]["holes"][number];

const LIST = "ports.holes";

const WANTED = [
  ["use", "Use: choose what is screwed into it, or clear the row."],
  ["thread", "Thread: choose one, or clear the row."],
  ["face", "Drilled from: choose a face, or clear the row."],
] as const;

const isInEnd = ({ face }: Port): boolean => face === "datum-end" || face === "far-end";

/** The breadth of the face that a port is drilled from [m]. */
function faceOf({ face }: Port, rail: PlanValues["rail"]): number | undefined {
  return face === "front" || face === "back" ? rail.height : breadthOf(rail);
}

function faultsIn(port: Port, path: string, { rail }: PlanValues, say: Say): Fault[] {
  const lacking = WANTED.filter(([name]) => port[name] === undefined);
  if (lacking.length > 0) {
    return lacking.map(([name, message]) => fault(`${path}.${name}`, message));
  }
  if (port.face === "far-end" && rail.ends === "blind") {
    return [fault(
      `${path}.face`,
      "Drilled from: a blind gallery does not reach the far end. Choose another face, or ends that are drilled through.",
    )];
  }
  const hole = {
    path,
    what: "the thread",
    at: isInEnd(port) ? rail.length / 2 : port.at,
    across: port.across,
    width: port.thread === undefined ? 0 : threadWidth(port.thread),
    face: faceOf(port, rail),
  };
  return holeFaults(hole, rail.length, say);
}

/** What must hold within the rows of the ports. */
export const PORT_RULES: readonly Rule[] = [
  {
    of: [LIST, "rail.length", "rail.shape", "rail.height", "rail.width", "rail.ends"],
    find: (values, say) =>
      values.ports.holes.flatMap((port, i) => faultsIn(port, `${LIST}.${i}`, values, say)),
  },
  {
    of: [LIST],
    find: ({ ports }) =>
      twice(
        LIST,
        ports.holes,
        (port) =>
          isInEnd(port) || port.at === undefined
            ? undefined
            : `${port.face} ${placeInWords(port.at, port.across)}`,
      ),
  },
  {
    of: [LIST],
    find: ({ ports: { holes } }) =>
      holes.flatMap((port, i) =>
        isInEnd(port) && holes.findIndex(({ face }) => face === port.face) < i
          ? [fault(
            `${LIST}.${i}.face`,
            "Drilled from: an end has room for one port, in place of the gallery's plug. Choose another face.",
          )]
          : []
      ),
  },
];
