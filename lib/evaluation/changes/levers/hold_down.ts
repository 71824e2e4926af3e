/** The screws that hold the rail down, and the plugs in its ends. */
import { PLUG_THREADS } from "@/lib/plan/mod.ts";
import { MATERIALS } from "@/lib/strength/mod.ts";
import { PORT_SHAPES } from "@/lib/thread/mod.ts";
import { chosen } from "../chosen.ts";
import type { Lever } from "../lever.ts";
import { stepped } from "../stepped.ts";

const TORQUES = { metric: { size: 0.5, unit: "N m" }, inch: { size: 5, unit: "lb in" } } as const;
const MILLIMETRES = {
  metric: { size: 1, unit: "mm" },
  inch: { size: 1 / 32, unit: "in" },
} as const;

/** Everything about screws and plugs. */
export const HOLD_DOWN_LEVERS: readonly Lever[] = [
  stepped({
    id: "screw-tighter",
    name: "screws tightened more",
    mends: ["hold-preload"],
    path: "holdDown.torque",
    to: "up",
    steps: TORQUES,
  }),
  stepped({
    id: "screw-looser",
    name: "screws tightened less",
    mends: ["hold-stripping", "hold-proof"],
    path: "holdDown.torque",
    to: "down",
    steps: TORQUES,
    most: 200,
  }),
  stepped({
    id: "screw-longer",
    name: "screws that go in deeper",
    mends: ["hold-stripping"],
    path: "holdDown.engagement",
    to: "up",
    steps: MILLIMETRES,
    most: 40,
  }),
  chosen({
    id: "screw-larger",
    name: "larger screws",
    mends: ["hold-stripping", "hold-proof", "hold-preload"],
    path: "holdDown.thread",
    words: ({ values }) => {
      const sizes = ["M5", "M6", "M8", "M10"];
      return sizes.slice(sizes.indexOf(values.holdDown.thread) + 1);
    },
  }),
  chosen({
    id: "screw-stronger",
    name: "stronger screws",
    mends: ["hold-proof"],
    path: "holdDown.strengthClass",
    words: ({ values }) => {
      const classes = ["A2-70", "8.8", "10.9", "12.9"];
      return classes.slice(classes.indexOf(values.holdDown.strengthClass) + 1);
    },
  }),
  chosen({
    id: "boss-stronger",
    name: "bosses of a stronger material",
    mends: ["hold-stripping"],
    path: "holdDown.bossMaterial",
    words: ({ values }) => {
      const now = MATERIALS[values.holdDown.bossMaterial].shear_Pa;
      return Object.entries(MATERIALS)
        .filter(([, { shear_Pa }]) => shear_Pa > now)
        .toSorted(([, a], [, b]) => a.shear_Pa - b.shear_Pa)
        .map(([name]) => name);
    },
  }),
  chosen({
    id: "plug-larger",
    name: "larger plugs",
    mends: ["plug-thread"],
    path: "rail.plugThread",
    words: ({ values }) => {
      const now = values.rail.plugThread;
      const drill = (word: keyof typeof PLUG_THREADS): number => PORT_SHAPES[word].drill_m;
      return (Object.keys(PLUG_THREADS) as (keyof typeof PLUG_THREADS)[])
        .filter((word) => PORT_SHAPES[word].seal === "o-ring")
        .filter((word) => now === undefined || drill(word) > drill(now))
        .toSorted((a, b) => drill(a) - drill(b));
    },
  }),
  stepped({
    id: "plug-deeper",
    name: "plugs that go in deeper",
    mends: ["plug-thread"],
    path: "rail.plugEngagement",
    to: "up",
    steps: MILLIMETRES,
    most: 40,
  }),
];
