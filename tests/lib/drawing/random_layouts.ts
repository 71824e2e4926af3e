/** Rails by chance: any bar, holes anywhere on it, whether they could be made or not. */
import type { Face, Hole, Layout } from "@/lib/layout/mod.ts";
import { Seeded } from "../../helpers/seeded.ts";
import {
  bar,
  drilled,
  feedPort,
  gallery,
  plug,
  pocket,
  profile,
  screw,
  sensorPort,
} from "./sample_layouts.ts";

/** A rail by chance. */
export function randomLayout(seed: number): Layout {
  const chance = new Seeded(seed);
  const isRound = chance.chance(0.3);
  const height = tenths(chance.between(22, 48));
  const width = isRound ? height : tenths(chance.between(22, 56));
  const of = bar(isRound ? "round" : "rectangular", tenths(chance.between(70, 820)), height, width);
  const length = of.length_m * 1000;
  const bore = chance.oneOf([8, 9.5, 11, 12.7, 14]);
  const up = tenths(chance.between(0.45, 0.6) * height);
  const holes: Hole[] = [gallery(of, bore, up)];
  if (chance.chance(0.7)) holes.push(plug(of, "datum-end", up, Math.min(bore, 10.2)));
  if (chance.chance(0.5)) holes.push(plug(of, "far-end", up, Math.min(bore, 10.2)));
  const count = chance.whole(1, 8);
  for (let i = 0; i < count; i++) {
    const at = tenths(length * (i + 0.5) / count + chance.between(-3, 3));
    const across = chance.chance(0.2) ? tenths(chance.between(-3, 3)) : 0;
    const tilt = chance.chance(0.2) ? Math.round(chance.between(-14, 14)) : 0;
    holes.push(pocket(of, i + 1, at, up, { across, tilt }));
  }
  const faces: Face[] = ["opposite", "front", "back"];
  const ports = chance.whole(0, 4);
  for (let i = 0; i < ports; i++) {
    const face = chance.oneOf(faces);
    const at = tenths(chance.between(12, length - 12));
    const across = face === "opposite" ? 0 : up;
    const deep = tenths((face === "opposite" ? height - up : width / 2) - bore / 3);
    holes.push(
      chance.chance(0.5)
        ? sensorPort(of, `port-${i}`, face, at, across, Math.max(11, deep))
        : feedPort(of, `port-${i}`, `Port ${i + 1}`, face, at, across, Math.max(8, deep)),
    );
  }
  if (chance.chance(0.3)) {
    holes.push(drilled(of, {
      id: "end-port",
      title: "A port with a name that is rather long for its column",
      feature: "port",
      face: "far-end",
      at: tenths(chance.between(-4, 4)),
      across: tenths(height / 2 + chance.between(-3, 3)),
      profile: profile({ cut: "thread", to: 9, d: 8.5 }, { cut: "tip", to: 11.5, d: 8.5, end: 0 }),
      thread: ["M10x1.5", 10, 1.5, 8],
    }));
  }
  const screws = chance.whole(0, 5);
  for (let i = 0; i < screws; i++) {
    const side = chance.oneOf([-1, 1]);
    holes.push(
      screw(of, i + 1, tenths(chance.between(8, length - 8)), tenths(side * (width / 2 - 6))),
    );
  }
  return { bar: of, holes };
}

/** Holes by chance that are said to be in trouble. */
export function randomTroubles({ holes }: Layout, seed: number): { hole: string; says: string }[] {
  const chance = new Seeded(seed + 1000);
  return holes.filter(() => chance.chance(0.15)).map(({ id }) => ({
    hole: id,
    says: chance.oneOf([
      "meets Pocket 2",
      "leaves no wall to the front of the bar",
      "no thread left",
    ]),
  }));
}

function tenths(value: number): number {
  return Math.round(value * 10) / 10;
}
