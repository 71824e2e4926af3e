/** What must hold of the gallery within its bar. */
import type { Fault } from "../fault.ts";
import type { PlanValues } from "../sections.ts";
import { asTyped, fault, type Rule, type Say } from "./rule.ts";

type Rail = PlanValues["rail"];

/** A rail whose bar and gallery are known. */
interface Known {
  readonly isRound: boolean;
  readonly bore: number;
  readonly height: number;
  readonly width: number;
  readonly up: number;
  readonly across: number;
}

const SIZES = [
  "rail.bore",
  "rail.shape",
  "rail.height",
  "rail.width",
  "rail.galleryUp",
  "rail.galleryAcross",
];

/** No wall at all, whatever the last bits of the sizes it is between [m]. */
const NO_WALL_M = 1e-9;

/** Nothing for a gallery as wide as its bar: that is said at its bore. */
function knownOf(
  { shape, bore, height, width, galleryUp, galleryAcross }: Rail,
): Known | undefined {
  if (bore === undefined || height === undefined) return undefined;
  const isRound = shape === "round";
  const other = isRound ? height : width ?? height;
  if (bore >= Math.min(height, other)) return undefined;
  const up = galleryUp ?? height / 2;
  return { isRound, bore, height, width: other, up, across: galleryAcross };
}

/** The least that stands around the gallery; nothing or less where it breaks out. */
function wallAround({ isRound, bore, height, width, up, across }: Known): number {
  const radius = bore / 2;
  if (isRound) return height / 2 - Math.hypot(up - height / 2, across) - radius;
  return Math.min(up, height - up, width / 2 - Math.abs(across)) - radius;
}

/** Put at whichever of the two takes the gallery farther off the middle for the room there is. */
function breaksOut(known: Known, say: Say): Fault {
  const { isRound, bore, height, width, up, across } = known;
  const upRoom = (height - bore) / 2;
  const acrossRoom = (width - bore) / 2;
  const off = Math.abs(up - height / 2);
  const isAcross = Math.abs(across) / acrossRoom > off / upRoom;
  // In a round bar each of the two leaves the other less.
  const room = (most: number, other: number): number =>
    isRound ? Math.sqrt(Math.max(0, most ** 2 - other ** 2)) : most;
  if (isAcross) {
    const most = room(acrossRoom, off);
    return fault(
      "rail.galleryAcross",
      `Gallery off the middle: the gallery would break out of the bar. Enter less than ${
        say(most, "length")
      } either way.`,
    );
  }
  const most = room(upRoom, Math.abs(across));
  return fault(
    "rail.galleryUp",
    `Height of the gallery: the gallery would break out of the bar. Enter more than ${
      say(height / 2 - most, "length")
    } and less than ${say(height / 2 + most, "length")}.`,
  );
}

/** What must hold of the gallery within its bar. */
export const GALLERY_RULES: readonly Rule[] = [
  {
    of: SIZES,
    find: ({ rail }, say) => {
      const known = knownOf(rail);
      return known === undefined || wallAround(known) > NO_WALL_M
        ? undefined
        : breaksOut(known, say);
    },
  },
  {
    of: [...SIZES, "rail.ownWall"],
    find: ({ rail }, say) => {
      const known = knownOf(rail);
      if (known === undefined || rail.ownWall === undefined) return undefined;
      const most = wallAround(known);
      return most <= NO_WALL_M || asTyped(rail.ownWall) <= asTyped(most) ? undefined : fault(
        "rail.ownWall",
        `Least wall of your section: its outside sizes leave no more than ${
          say(most, "length")
        } around the gallery. Enter that or less.`,
      );
    },
  },
  {
    of: ["rail.ends", "rail.drilledFrom"],
    find: ({ rail }) =>
      rail.ends === "blind" && rail.drilledFrom === "both"
        ? fault(
          "rail.drilledFrom",
          "Gallery drilled from: a blind gallery is drilled from one end. Choose that, or ends that are drilled through.",
        )
        : undefined,
  },
  {
    of: ["rail.galleryDepth", "rail.length"],
    find: ({ rail }, say) =>
      rail.galleryDepth === undefined || rail.galleryDepth < rail.length ? undefined : fault(
        "rail.galleryDepth",
        `Depth of the blind gallery: it leaves the far end open. Enter less than ${
          say(rail.length, "length")
        }, or choose ends that are drilled through.`,
      ),
  },
];
