/** The depths of a sensor port from the face down, each with its tool. */
import { type Port, SEALS } from "./ports.ts";
import type { ConeSeat } from "./cone_seat.ts";
import { drillSize, type SayLength } from "./millimetres.ts";

/** One length of the port. */
export interface PortLayer {
  /** Depth where it begins [m]. */
  readonly from_m: number;
  /** Depth where it ends [m]. */
  readonly to_m: number;
  /** What is there. */
  readonly what: string;
  /** What makes it. */
  readonly tool: string;
  /** Depth that the tool's tip is at when the layer is done [m]; only where it lies elsewhere than `to_m` and counts. */
  readonly tip_m?: number;
}

/** What {@linkcode portStack} needs. */
export interface PortStackInput {
  /** Writes a length as the reader wants it. */
  readonly say: SayLength;
  /** The port. */
  readonly port: Port;
  /** Diameter of the tapping drill [m]. */
  readonly drill_m: number;
  /** Diameter of the pilot [m]. */
  readonly pilot_m: number;
  /** Length of full thread [m]. */
  readonly fullThread_m: number;
  /** Depth where the gallery first opens [m]. */
  readonly opening_m: number;
  /** Depth where the last hole is open all round, or the gallery's axis where it never is [m]. */
  readonly opened_m: number;
  /** The seat at the bottom; undefined for a port that has none. */
  readonly seat: ConeSeat | undefined;
}

/**
 * Stacks a port up from the face. What has no length is left out, and a port whose seat would
 * have to begin above the face has no layers, so that nothing that can't be made is listed.
 *
 * @param input The port and its depths.
 * @returns The layers, from the face down.
 *
 * @example
 * ```ts
 * import { assertEquals } from "@std/assert";
 * import { millimetres } from "./millimetres.ts";
 * import { PORTS } from "./ports.ts";
 *
 * const stack = portStack({
 *   say: millimetres,
 *   port: PORTS["M12x1.5-face"],
 *   drill_m: 0.0105,
 *   pilot_m: 0.004,
 *   fullThread_m: 0.006,
 *   opening_m: 0.006,
 *   opened_m: 0.009,
 *   seat: undefined,
 * });
 *
 * assertEquals(stack.map(({ what }) => what), ["full thread", "opening into the gallery"]);
 * ```
 */
export function portStack(input: PortStackInput): PortLayer[] {
  return (input.seat === undefined ? throughThread(input) : ontoSeat(input, input.seat))
    .filter(({ from_m, to_m }) => to_m > from_m)
    .toSorted((a, b) => a.from_m - b.from_m);
}

function throughThread(
  { say, port, drill_m, opening_m, opened_m }: PortStackInput,
): PortLayer[] {
  const drill = `${drillSize(drill_m, say)} drill`;
  return [
    {
      from_m: 0,
      to_m: port.mouth_m,
      what: SEALS[port.seal].oRing ? "cone for the O-ring" : "mouth",
      tool: "port cutter or form tool",
    },
    {
      from_m: port.mouth_m,
      to_m: opening_m,
      what: "full thread",
      tool: `${drill}, then ${port.thread} tap, its lead run out into the gallery`,
    },
    {
      from_m: Math.max(0, opening_m, port.mouth_m),
      to_m: opened_m,
      what: "opening into the gallery",
      tool: `${drill}, fed by hand as it breaks through`,
    },
  ];
}

/** The pilot comes first, so that the spotting drill's tip runs free in it and the seat is cut last. */
function ontoSeat(
  { say, port, drill_m, pilot_m, fullThread_m, opening_m, opened_m }: PortStackInput,
  { seatDepth_m, coneDepth_m = 0, spotPoint_m }: ConeSeat,
): PortLayer[] {
  if (seatDepth_m < 0) return [];
  const spot = `second: ${drillSize(drill_m, say)} spotting drill, 90 degrees`;
  const pilot = `first: ${drillSize(pilot_m, say)} pilot drill`;
  const end_m = seatDepth_m + coneDepth_m;
  const tip_m = seatDepth_m + spotPoint_m;
  return [
    {
      from_m: 0,
      to_m: fullThread_m,
      what: "full thread",
      tool: `${spot}; third: ${port.thread} bottoming tap`,
    },
    {
      from_m: Math.max(0, fullThread_m),
      to_m: seatDepth_m,
      what: "tap lead and clearance, no full thread",
      tool: spot,
    },
    {
      from_m: seatDepth_m,
      to_m: end_m,
      what: end_m > opening_m ? "45 degree seat, running into the gallery" : "45 degree seat",
      tool: `${spot}: stop with its tip at ${say(tip_m)}, in the pilot`,
      tip_m,
    },
    {
      from_m: end_m,
      to_m: opening_m,
      what: "pilot",
      tool: `${pilot}, all the way from the face`,
    },
    {
      from_m: Math.max(0, opening_m, end_m),
      to_m: Math.max(opened_m, end_m),
      what: "opening into the gallery",
      tool: `${pilot}, fed by hand as it breaks through`,
    },
  ];
}
