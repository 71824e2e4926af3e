/** The gallery and what closes its ends. */
import { entryOn } from "./entry.ts";
import type { Bar, Face, Hole, Stretch } from "./model.ts";
import type { GalleryEnd, GallerySpec, ThreadedEnd } from "./spec.ts";
import { cone, cylinder, depthOf, DRILL_POINT_rad, leadIn, tip } from "./stretches.ts";

/** The id of the gallery in every rail. */
export const GALLERY_ID = "gallery";

/** Lays the gallery; drilled from both ends it is one hole right through. */
export function layGallery(bar: Bar, spec: GallerySpec): Hole {
  const { bore_m, blindDepth_m } = spec;
  const face: Face = spec.drilledFrom === "far-end" ? "far-end" : "datum-end";
  const hole: Hole = {
    id: GALLERY_ID,
    title: "Gallery",
    feature: "gallery",
    face,
    ...entryOn(bar, face, { at_m: spec.across_m, across_m: spec.up_m }),
    profile: [],
    opensInto: [],
  };
  if (blindDepth_m !== undefined) {
    return {
      ...hole,
      profile: [...cylinder("bore", 0, blindDepth_m, bore_m), tip(blindDepth_m, bore_m)],
    };
  }
  return {
    ...hole,
    exit: face === "datum-end" ? "far-end" : "datum-end",
    profile: cylinder("bore", 0, bar.length_m, bore_m),
  };
}

/** Lays what the plugs or caps of the gallery sit in. */
export function layPlugs(bar: Bar, spec: GallerySpec): readonly Hole[] {
  const { datum, far } = spec.ends;
  return [
    ...layPlug(bar, spec, "datum-end", datum),
    ...layPlug(bar, spec, "far-end", far),
  ];
}

function layPlug(
  bar: Bar,
  spec: GallerySpec,
  face: "datum-end" | "far-end",
  end: GalleryEnd | undefined,
): readonly Hole[] {
  if (end === undefined) return [];
  const side = face === "datum-end" ? "datum end" : "far end";
  return [{
    id: face === "datum-end" ? "plug-datum" : "plug-far",
    title: `${end.kind === "cap" ? "Cap" : "Plug"}, ${side}`,
    feature: "plug",
    face,
    ...entryOn(bar, face, { at_m: spec.across_m, across_m: spec.up_m }),
    ...shapeOf(end, spec.bore_m),
    opensInto: [GALLERY_ID],
  }];
}

function shapeOf(end: GalleryEnd, gallery_m: number): Pick<Hole, "profile" | "thread"> {
  switch (end.kind) {
    case "thread":
      return threaded(end, gallery_m);
    case "ring": {
      const lead = leadIn(end.leadMouth_m, end.bore_m, end.leadAngle_rad);
      return { profile: [...lead, ...cylinder("bore", depthOf(lead), end.depth_m, end.bore_m)] };
    }
    case "cap":
      return { profile: cylinder("spotface", 0, end.depth_m, end.recess_m) };
  }
}

/** A tapping drill wider than the gallery leaves its point's cone where it ends. */
function threaded(end: ThreadedEnd, gallery_m: number): Pick<Hole, "profile" | "thread"> {
  const { drill_m, drillDepth_m } = end;
  const seat: Stretch[] = end.seat === undefined
    ? []
    : cone("seat", 0, [end.seat.mouth_m, drill_m], end.seat.included_rad);
  const from_m = depthOf(seat);
  return {
    profile: [
      ...seat,
      ...cylinder("thread", from_m, drillDepth_m, drill_m),
      ...cone("tip", drillDepth_m, [drill_m, gallery_m], DRILL_POINT_rad),
    ],
    thread: { ...end.thread, from_m, to_m: end.threadDepth_m },
  };
}
