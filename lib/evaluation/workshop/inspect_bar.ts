/** Inspection of the bar: where gallery and holes lie, walls, flatness. */
import {
  bladeFor,
  FEELER_BLADES,
  FLATNESS_PER_CYLINDER_m,
  flatnessLimit,
  generalTolerance,
  INSPECTION_POINTS,
  type InspectionPointId,
  lastPlaceError,
} from "@/lib/inspect/mod.ts";
import type { Hole } from "@/lib/layout/mod.ts";
import { CRITERIA } from "../criteria.ts";
import type { Bench } from "./bench.ts";
import { atLeast, type Inspection, type InspectionFigure, plusMinus } from "./inspection.ts";

/** What a point is before the plan has its say. */
export function pointOf(
  id: InspectionPointId,
  plan: Partial<Pick<Inspection, "notes" | "figures" | "time">> = {},
): Inspection {
  return { time: "bar", notes: [], figures: [], ...INSPECTION_POINTS[id], ...plan, id };
}

/** Gallery, walls, places and faces. */
export function barPoints(bench: Bench): readonly Inspection[] {
  return [breakOut(bench), leastWall(bench), places(bench), ...otherPlaces(bench), flat(bench)];
}

/** How far the gallery's axis is from the faces of the bar [m]. */
function fromFaces(bench: Bench): readonly (readonly [face: string, axis_m: number])[] {
  const { bar } = bench.layout;
  const [, y_m = 0, z_m = 0] = bench.gallery?.entry ?? [];
  return [
    ["injector face", z_m],
    ["face opposite", bar.height_m - z_m],
    ["front", bar.width_m / 2 + y_m],
    ["back", bar.width_m / 2 - y_m],
  ];
}

function ends({ gallery }: Bench): readonly string[] {
  return gallery?.exit === undefined ? ["datum end"] : ["datum end", "far end"];
}

function breakOut(bench: Bench): Inspection {
  const bore_m = bench.gallery?.profile[0]?.fromDiameter_m ?? 0;
  const drift_m = bench.evaluation.results.drill.drift_m ?? 0;
  // Two faces at right angles tell where it lies; the others follow from the bar's size.
  const [up, , front] = fromFaces(bench);
  const figures = ends(bench).flatMap((end) =>
    [up, front].flatMap((side): readonly InspectionFigure[] =>
      side === undefined
        ? []
        : [plusMinus(`${end}, wall to the ${side[0]}`, side[1] - bore_m / 2, drift_m)]
    )
  );
  return pointOf("break-out", {
    figures,
    notes: [
      `The verdicts allow ${
        bench.say(drift_m)
      } of wander; more than that, and they no longer hold.`,
      ...(bench.isWelded ? ["Measured before the caps go on."] : []),
      ...(bench.gallery?.exit === undefined
        ? ["It ends in the bar: where it lies there, a rod that fits it tells."]
        : []),
    ],
  });
}

function leastWall(bench: Bench): Inspection {
  const { bar } = bench.evaluation.results;
  const least_m = Math.max(CRITERIA.wall.limit, bar?.strengthWall_m ?? 0);
  return pointOf("least-wall", {
    figures: [...ends(bench), "beside the ports"].map((where) => atLeast(where, least_m)),
    notes: [`Better ${bench.say(Math.max(CRITERIA.wall.aim, least_m))}.`],
  });
}

function places(bench: Bench): Inspection {
  const { pockets, values } = bench;
  const { placeTolerance } = values.stations;
  return pointOf("place", {
    figures: pockets.map(({ title, entry }) => plusMinus(title, entry[0], placeTolerance)),
    notes: [
      `The plan's own tolerance of ± ${bench.say(placeTolerance)} counts for the pockets.`,
      ...fromOneEnd(bench),
    ],
  });
}

/** What a chain of dimensions would cost, by the standard's own tolerances. */
function fromOneEnd(bench: Bench): readonly string[] {
  const along = bench.pockets.map(({ entry }) => entry[0]);
  const [first] = along;
  const last = along.at(-1);
  if (along.length < 2 || first === undefined || last === undefined || last - first < 1e-3) {
    return [];
  }
  const pitch_m = (last - first) / (along.length - 1);
  const chain_m = lastPlaceError("chain", along.length, pitch_m);
  const datum_m = lastPlaceError("datum", along.length, pitch_m);
  return [
    `Under the standard's class m the last pocket may be ${
      bench.say(chain_m)
    } off when measured hole to hole, ${bench.say(datum_m)} from the first.`,
  ];
}

/** The standard has no tolerance for what is shorter than this [m]. */
const SHORTEST_m = 5e-4;

function otherPlaces(bench: Bench): readonly Inspection[] {
  const holes = [
    ...(bench.sensor === undefined ? [] : [bench.sensor]),
    ...bench.ports,
    ...bench.screws,
  ];
  const along = holes.filter(({ face, entry }: Hole) =>
    face !== "datum-end" && face !== "far-end" && entry[0] >= SHORTEST_m
  );
  if (along.length === 0) return [];
  return [{
    ...pointOf("place", {
      figures: along.map(({ title, entry }) =>
        plusMinus(title, entry[0], generalTolerance(entry[0]))
      ),
    }),
    id: "place-others",
    says: "Place of ports and screws, from the same end of the bar.",
    why: "Too near to a pocket or to the gallery's edge, the wall between them is thin.",
  }];
}

/** What the table of flatness takes. */
const MOST_CYLINDERS = 16;

function flat(bench: Bench): Inspection {
  const cylinders = Math.min(MOST_CYLINDERS, Math.max(1, bench.pockets.length));
  const limit_m = flatnessLimit({ cylinders, perCylinder: FLATNESS_PER_CYLINDER_m });
  const blade = bladeFor(FEELER_BLADES[bench.values.sheet.units], limit_m);
  const name = `gap along the injector face, ${cylinders} ${
    cylinders === 1 ? "injector" : "injectors"
  }`;
  return pointOf("flat", {
    figures: [{
      name,
      kind: "length",
      nominal: undefined,
      least: undefined,
      most: limit_m,
      isFine: true,
    }],
    notes: [
      blade === undefined
        ? "No common blade is so thin: blue a flat plate, and see the face mark all over."
        : `The blade to try is ${blade.name}: if it stays out everywhere, the face meets this.`,
      `${
        bench.limit(FLATNESS_PER_CYLINDER_m)
      } for each cylinder of sealed length is common practice, no source; a limit of the engine's maker prevails. A 0.002 in blade is 0.051 mm.`,
    ],
  });
}
