/** Answers to the cases of the sensor port. */
import {
  blindHoleDepth,
  coneDepth,
  coneSide,
  farWallClearance,
  firstOpening,
  fullThreadAboveGallery,
  lastOpening,
  pointLength,
  PORTS,
  SEALS,
  seatGrowth,
} from "@/lib/thread/mod.ts";
import type { Answers } from "../../helpers/checks.ts";
import { DEGREE, find, MM } from "./shorthand.ts";

interface Crossing {
  readonly gallery_axis_depth_mm: number;
  readonly gallery_dia_mm: number;
}
const crossing = ({ gallery_axis_depth_mm, gallery_dia_mm }: Crossing) => ({
  axisDepth: gallery_axis_depth_mm * MM,
  gallery: gallery_dia_mm * MM,
});

interface SeatCase {
  readonly seat_dia_mm: number;
  readonly hole_dia_mm: number;
  readonly included_deg: number;
}

export const port: Answers = {
  "drill point length": {
    methods: [pointLength],
    run: ({ drill_mm, point_deg }: { readonly drill_mm: number; readonly point_deg: number }) => {
      const point = pointLength({ drill: drill_mm * MM, included: point_deg * DEGREE });
      return { tip_mm: point / MM, ratio: point / (drill_mm * MM) };
    },
  },
  "depth of a pointed spot drill for a given seat (mouth) diameter": {
    methods: [pointLength],
    run: ({ seat_dia_mm, included_deg }: SeatCase) => ({
      depth_mm: pointLength({ drill: seat_dia_mm * MM, included: included_deg * DEGREE }) / MM,
    }),
  },
  "axial depth of the conical seat between mouth and tapping hole": {
    methods: [coneDepth, coneSide],
    run: ({ seat_dia_mm, hole_dia_mm, included_deg }: SeatCase) => {
      const cone = {
        wide: seat_dia_mm * MM,
        narrow: hole_dia_mm * MM,
        included: included_deg * DEGREE,
      };
      return { cone_depth_mm: coneDepth(cone) / MM, slant_mm: coneSide(cone) / MM };
    },
  },
  "how much a depth error changes the seat diameter": {
    methods: [seatGrowth],
    run: (
      { included_deg, depth_error_mm }: {
        readonly included_deg: number;
        readonly depth_error_mm: number;
      },
    ) => ({
      dia_change_mm: seatGrowth({
        deeper: depth_error_mm * MM,
        included: included_deg * DEGREE,
      }) / MM,
    }),
  },
  "blind tapped hole: depth of drilled hole to the full diameter for a required full thread": {
    methods: [blindHoleDepth, pointLength],
    run: (
      { thread, full_thread_mm, tap_lead_threads, clearance_pitches }: {
        readonly thread: string;
        readonly full_thread_mm: number;
        readonly tap_lead_threads: number;
        readonly clearance_pitches: number;
      },
    ) => {
      const { pitch_m, tappingDrill_m } = find(thread);
      const depth = blindHoleDepth({
        fullThread: full_thread_mm * MM,
        pitch: pitch_m,
        leadThreads: tap_lead_threads,
        clearThreads: clearance_pitches,
      });
      const point = pointLength({ drill: tappingDrill_m, included: 118 * DEGREE });
      return {
        full_dia_depth_mm: depth / MM,
        point_118_mm: point / MM,
        total_depth_mm: (depth + point) / MM,
      };
    },
  },
  "radial port meeting a round gallery: depth at which the wall of the port first and last opens into the gallery":
    {
      methods: [firstOpening, lastOpening],
      run: (c: Crossing & { readonly port_dia_mm: number }) => {
        const first = firstOpening(crossing(c)) / MM;
        const last = lastOpening({ ...crossing(c), drill: c.port_dia_mm * MM }) / MM;
        return {
          first_open_mm: first,
          last_open_mm: last,
          tip118_first_touch_mm: first,
          full_dia_clear_depth_to_drill_mm: last,
        };
      },
    },
  "thread length available above the gallery": {
    methods: [fullThreadAboveGallery, firstOpening],
    run: (c: Crossing & { readonly seat_depth_mm: number; readonly needed_mm: number }) => {
      const available = fullThreadAboveGallery({
        opening: firstOpening(crossing(c)),
        mouth: c.seat_depth_mm * MM,
      });
      return { available_mm: available / MM, ok: available >= c.needed_mm * MM };
    },
  },
  "drill tip clearance to the far wall of the gallery when the full diameter has just broken through":
    {
      methods: [farWallClearance, lastOpening, pointLength],
      run: (c: Crossing & { readonly drill_mm: number; readonly point_deg: number }) => {
        const at = crossing(c);
        const drill = c.drill_mm * MM;
        const opened = lastOpening({ ...at, drill });
        const point = pointLength({ drill, included: c.point_deg * DEGREE });
        return {
          tip_depth_mm: (opened + point) / MM,
          far_wall_mm: (at.axisDepth + at.gallery / 2) / MM,
          clearance_mm: farWallClearance({ ...at, opened, point }) / MM,
        };
      },
    },
  "a 9 mm drill serves an M10x1 tap": {
    methods: [],
    run: () => {
      const { tappingDrill_m, minorMin_m = NaN, minorMax_m = NaN } = PORTS["M10x1-cone"];
      return {
        drill_mm: tappingDrill_m / MM,
        inside_6H_minor: tappingDrill_m >= minorMin_m && tappingDrill_m <= minorMax_m,
        minor_min_mm: minorMin_m / MM,
        minor_max_mm: minorMax_m / MM,
      };
    },
  },
  "sealing on a 45-degree cone is metal to metal": {
    methods: [],
    run: () => {
      const { contact, threadSealant, oRing, concentric } = SEALS.cone;
      return {
        seal: contact,
        sealant_on_thread: threadSealant,
        o_ring: oRing,
        concentricity_matters: concentric,
      };
    },
  },
};
