/** Pockets, ports and screws. */
import { BEHIND, entryOn } from "./entry.ts";
import { meeting, tunnelOf } from "./gallery_axis.ts";
import type { Bar, Hole, Stretch } from "./model.ts";
import type { PortSpec, ScrewSpec, StationSpec } from "./spec.ts";
import { cone, cylinder, depthOf, leadIn, pilot, tip } from "./stretches.ts";
import { dot, minus } from "./vector.ts";

/** Lays the pocket of an injector; its pilot's full diameter ends at the gallery's axis. */
export function layPocket(bar: Bar, gallery: Hole, station: StationSpec, nth: number): Hole {
  const { pocket, tilt_rad } = station;
  const { entry } = entryOn(bar, "injectors", station);
  const line: Pick<Hole, "entry" | "into"> = {
    entry,
    into: [Math.sin(tilt_rad), 0, Math.cos(tilt_rad)],
  };
  const lead = leadIn(pocket.leadMouth_m, pocket.bore_m, pocket.leadAngle_rad);
  const bore = cylinder("bore", depthOf(lead), pocket.depth_m, pocket.bore_m);
  const bottom = pocket.bottom === "flat" ? [] : cone(
    "bore",
    pocket.depth_m,
    [pocket.bore_m, pocket.pilot_m],
    pocket.bottom.included_rad,
  );
  const profile = [...lead, ...bore, ...bottom];
  return {
    id: `pocket-${nth}`,
    title: `Pocket ${nth}`,
    feature: "pocket",
    face: "injectors",
    ...line,
    profile: [...profile, ...pilotInto(gallery, line, profile, pocket.pilot_m)],
    opensInto: [gallery.id],
  };
}

/** Lays a port; a pilot's full diameter ends at the gallery's axis, or where the gallery begins. */
export function layPort(bar: Bar, gallery: Hole, port: PortSpec): Hole {
  const { id, title, face, profile, pilot_m, thread } = port;
  const line = entryOn(bar, face, port);
  const opened = pilot_m === undefined ? [] : pilotInto(gallery, line, profile, pilot_m);
  return {
    id,
    title,
    feature: "port",
    face,
    ...line,
    profile: [...profile, ...opened],
    ...(thread === undefined ? {} : { thread }),
    opensInto: port.intoGallery ? [gallery.id] : [],
  };
}

function pilotInto(
  gallery: Hole,
  line: Pick<Hole, "entry" | "into">,
  profile: readonly Stretch[],
  pilot_m: number,
): readonly Stretch[] {
  const tunnel = tunnelOf(gallery);
  if (tunnel === undefined) return [];
  const start = dot(minus(tunnel.from, line.entry), line.into);
  // Along the gallery's own axis the pilot ends where the full bore does.
  const way = dot(tunnel.axis, line.into);
  const headOn_m = start + way * (way > 0 ? tunnel.begins_m : tunnel.ends_m);
  const to_m = meeting(line, tunnel)?.depth_m ?? headOn_m;
  return pilot(depthOf(profile), to_m, pilot_m);
}

/** Lays a screw's hole. */
export function layScrew(bar: Bar, screw: ScrewSpec, nth: number): Hole {
  const line = entryOn(bar, screw.face, screw);
  const { counterbore, hole } = screw;
  const recess = counterbore === undefined
    ? []
    : cylinder("spotface", 0, counterbore.depth_m, counterbore.diameter_m);
  const base = {
    id: `screw-${nth}`,
    title: `Screw ${nth}`,
    feature: "screw",
    face: screw.face,
    ...line,
    opensInto: [],
  } as const;
  const from_m = depthOf(recess);
  if ("clearance_m" in hole) {
    const exit = BEHIND[screw.face];
    const through_m = Math.abs(entryOn(bar, exit, screw).entry[2] - line.entry[2]);
    return {
      ...base,
      exit,
      profile: [...recess, ...cylinder("bore", from_m, through_m, hole.clearance_m)],
    };
  }
  return {
    ...base,
    profile: [
      ...recess,
      ...cylinder("thread", from_m, hole.drillDepth_m, hole.drill_m),
      tip(hole.drillDepth_m, hole.drill_m),
    ],
    thread: { ...hole.thread, from_m, to_m: hole.threadDepth_m },
  };
}
