/** Rails to draw: made up, as builders would have them. */
import type { Bar, Face, Hole, HoleThread, Layout, Stretch, Vec3 } from "@/lib/layout/mod.ts";

/** Millimetres in the tests, metres in a layout. */
export const mm = (value: number): number => value / 1000;

/** A stretch that goes on from the one before to a depth [mm]. */
export interface Cutting {
  readonly cut: Stretch["cut"];
  readonly to: number;
  readonly d: number;
  readonly end?: number;
}

/** A profile of stretches that follow each other. */
export function profile(...cuttings: readonly Cutting[]): Stretch[] {
  let from = 0;
  return cuttings.map(({ cut, to, d, end = d }) => {
    const stretch = {
      cut,
      from_m: mm(from),
      to_m: mm(to),
      fromDiameter_m: mm(d),
      toDiameter_m: mm(end),
    };
    from = to;
    return stretch;
  });
}

const INTO: Readonly<Record<Face, Vec3>> = {
  injectors: [0, 0, 1],
  opposite: [0, 0, -1],
  front: [0, 1, 0],
  back: [0, -1, 0],
  "datum-end": [1, 0, 0],
  "far-end": [-1, 0, 0],
};

/** A bar [mm]. */
export function bar(shape: Bar["shape"], length: number, height: number, width = height): Bar {
  return { shape, length_m: mm(length), height_m: mm(height), width_m: mm(width) };
}

/** Where a hole begins on a face: `at` along the bar (of an end: y), `across` it [mm]. */
function entryOn(bar: Bar, face: Face, at: number, across: number): Vec3 {
  const middle = bar.height_m / 2;
  const chord = (off_m: number) => Math.sqrt(Math.max(0, middle * middle - off_m * off_m));
  const round = bar.shape === "round";
  if (face === "datum-end") return [0, mm(at), mm(across)];
  if (face === "far-end") return [bar.length_m, mm(at), mm(across)];
  if (face === "front" || face === "back") {
    const half = round ? chord(mm(across) - middle) : bar.width_m / 2;
    return [mm(at), face === "front" ? -half : half, mm(across)];
  }
  const half = round ? chord(mm(across)) : middle;
  return [mm(at), mm(across), middle + (face === "opposite" ? half : -half)];
}

/** What a hole is made from. */
export interface Drilled {
  readonly id: string;
  readonly title: string;
  readonly feature: Hole["feature"];
  readonly face: Face;
  readonly at: number;
  readonly across: number;
  readonly profile: readonly Stretch[];
  /** Name, major diameter, pitch and end of full thread [mm]. */
  readonly thread?: readonly [name: string, major: number, pitch: number, to: number];
  readonly exit?: Face;
  readonly opensInto?: readonly string[];
  /** Leaning along the bar [°]. */
  readonly tilt?: number;
}

/** The hole in a bar. */
export function drilled(of: Bar, given: Drilled): Hole {
  const { id, title, feature, face, at, across, profile, exit, opensInto = [], tilt = 0 } = given;
  const lean = tilt * Math.PI / 180;
  const into: Vec3 = tilt === 0 ? INTO[face] : [Math.sin(lean), 0, Math.cos(lean)];
  const thread: HoleThread | undefined = given.thread && {
    name: given.thread[0],
    major_m: mm(given.thread[1]),
    pitch_m: mm(given.thread[2]),
    from_m: 0,
    to_m: mm(given.thread[3]),
  };
  return {
    id,
    title,
    feature,
    face,
    entry: entryOn(of, face, at, across),
    into,
    profile,
    opensInto,
    ...(exit && { exit }),
    ...(thread && { thread }),
  };
}

/** A gallery right through. */
export function gallery(of: Bar, bore: number, up: number): Hole {
  return drilled(of, {
    id: "gallery",
    title: "Gallery",
    feature: "gallery",
    face: "datum-end",
    at: 0,
    across: up,
    exit: "far-end",
    profile: profile({ cut: "bore", to: of.length_m * 1000, d: bore }),
  });
}

/** A threaded end for a plug, opened by a tapping drill that leaves its cone. */
export function plug(of: Bar, face: "datum-end" | "far-end", up: number, bore: number): Hole {
  const drill = bore > 10 ? 14.5 : 10.5;
  return drilled(of, {
    id: face === "datum-end" ? "plug-datum" : "plug-far",
    title: face === "datum-end" ? "Plug, datum end" : "Plug, far end",
    feature: "plug",
    face,
    at: 0,
    across: up,
    profile: profile(
      { cut: "thread", to: 16, d: drill },
      {
        cut: "tip",
        to: 16 + (drill - bore) / 2 / Math.tan(59 * Math.PI / 180),
        d: drill,
        end: bore,
      },
    ),
    thread: drill > 14 ? ["M16x1.5", 16, 1.5, 13] : ["M12x1.5", 12, 1.5, 13],
    opensInto: ["gallery"],
  });
}

/** An injector's pocket, its pilot as deep as the gallery's axis. */
export function pocket(
  of: Bar,
  nth: number,
  at: number,
  up: number,
  more: Partial<Drilled> = {},
): Hole {
  const pilot = 6;
  const tilt = (more.tilt ?? 0) * Math.PI / 180;
  const deep = up / Math.cos(tilt);
  return drilled(of, {
    id: `pocket-${nth}`,
    title: `Pocket ${nth}`,
    feature: "pocket",
    face: "injectors",
    at,
    across: 0,
    profile: profile(
      { cut: "lead-in", to: 1.2 / 2 / Math.tan(15 * Math.PI / 180), d: 15.2, end: 14 },
      { cut: "bore", to: 9, d: 14 },
      { cut: "pilot", to: deep, d: pilot },
      { cut: "tip", to: deep + pilot / 2 / Math.tan(59 * Math.PI / 180), d: pilot, end: 0 },
    ),
    opensInto: ["gallery"],
    ...more,
  });
}

/** A sensor port with its seat at the bottom. */
export function sensorPort(
  of: Bar,
  id: string,
  face: Face,
  at: number,
  across: number,
  up: number,
): Hole {
  return drilled(of, {
    id,
    title: "Pressure sensor port",
    feature: "port",
    face,
    at,
    across,
    profile: profile(
      { cut: "thread", to: 8, d: 9 },
      { cut: "seat", to: 10.5, d: 9, end: 4 },
      { cut: "pilot", to: up, d: 4 },
      { cut: "tip", to: up + 1.2, d: 4, end: 0 },
    ),
    thread: ["M10x1", 10, 1, 7],
    opensInto: ["gallery"],
  });
}

/** A feed or return port with a spotface for its washer or ring. */
export function feedPort(
  of: Bar,
  id: string,
  title: string,
  face: Face,
  at: number,
  across: number,
  deep: number,
): Hole {
  return drilled(of, {
    id,
    title,
    feature: "port",
    face,
    at,
    across,
    profile: profile(
      { cut: "spotface", to: 0.5, d: 20 },
      { cut: "lead-in", to: 2.9, d: 15.6, end: 12.5 },
      { cut: "thread", to: deep, d: 12.5 },
      { cut: "tip", to: deep + 3.7, d: 12.5, end: 0 },
    ),
    thread: ["M14x1.5", 14, 1.5, deep - 0.5],
    opensInto: ["gallery"],
  });
}

/** A clearance hole right through, with a recess for the head. */
export function screw(of: Bar, nth: number, at: number, across: number, d = 6.6): Hole {
  return drilled(of, {
    id: `screw-${nth}`,
    title: `Screw ${nth}`,
    feature: "screw",
    face: "opposite",
    at,
    across,
    exit: "injectors",
    profile: profile(
      { cut: "spotface", to: 1, d: d + 3 },
      { cut: "bore", to: of.height_m * 1000, d },
    ),
  });
}

/** A square bar with four injectors: blind gallery, feed in the datum end, sensor in the far end. */
export function fourInjectors(): Layout {
  const of = bar("rectangular", 330, 25);
  const up = 16.5;
  return {
    bar: of,
    holes: [
      drilled(of, {
        id: "gallery",
        title: "Gallery",
        feature: "gallery",
        face: "datum-end",
        at: 0,
        across: up,
        profile: profile({ cut: "bore", to: 312, d: 9 }, { cut: "tip", to: 314.7, d: 9, end: 0 }),
      }),
      { ...plug(of, "datum-end", up, 9), id: "feed", title: "Feed", feature: "port" },
      ...[42, 124, 206, 288].map((at, i) => pocket(of, i + 1, at, up)),
      sensorPort(of, "sensor", "far-end", 0, up, 17),
      ...[83, 247].map((at, i) => screw(of, i + 1, at, -8.3, 4.5)),
    ],
  };
}

/** A short round bar with two pockets and a port in its far end. */
export function roundBar(): Layout {
  const of = bar("round", 140, 36);
  const up = 18;
  return {
    bar: of,
    holes: [
      gallery(of, 11, up),
      plug(of, "datum-end", up, 11),
      plug(of, "far-end", up, 11),
      pocket(of, 1, 35, up),
      pocket(of, 2, 105, up),
      sensorPort(of, "sensor", "front", 70, up, 18),
    ],
  };
}

/** A long bar with six injectors, one tilted and one off the line, ports on three faces, and screws. */
export function sixInjectors(): Layout {
  const of = bar("rectangular", 575, 38, 42);
  const up = 20;
  const places = [60, 151, 242, 333, 424, 515];
  return {
    bar: of,
    holes: [
      gallery(of, 11, up),
      plug(of, "far-end", up, 11),
      feedPort(of, "feed", "Feed", "datum-end", 0, up, 14),
      ...places.map((at, i) =>
        pocket(of, i + 1, at, up, i === 2 ? { tilt: 8 } : i === 4 ? { across: 2.5 } : {})
      ),
      sensorPort(of, "sensor", "opposite", 105, 0, 18),
      sensorPort(of, "temperature", "front", 285, up, 21),
      feedPort(of, "return", "Return", "back", 470, up, 14),
      ...[[28, -14], [196.5, 14], [380, -14], [547, 14]].map(([at = 0, across = 0], i) =>
        screw(of, i + 1, at, across)
      ),
    ],
  };
}

/** The samples by name. */
export const SAMPLES: Readonly<Record<string, () => Layout>> = {
  "four injectors": fourInjectors,
  "round bar": roundBar,
  "six injectors": sixInjectors,
};
