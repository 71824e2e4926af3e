/** Straight-thread ports that seal by an O-ring in a cone at their mouth. */

/** Threads of the O-ring ports, inch and metric. */
export type ORingThread =
  | "5/16-24"
  | "3/8-24"
  | "7/16-20"
  | "1/2-20"
  | "9/16-18"
  | "3/4-16"
  | "7/8-14"
  | "1 1/16-12"
  | "1 5/16-12"
  | "M8x1"
  | "M10x1"
  | "M12x1.5"
  | "M14x1.5"
  | "M16x1.5"
  | "M18x1.5"
  | "M22x1.5";

/** The O-ring of a port. */
export interface PortRing {
  /** As it is ordered: `AS568-904`, `8.1 x 1.6 mm`. */
  readonly name: string;
  /** Inside diameter, free [m]. */
  readonly inside_m: number;
  /** Diameter of its section [m]. */
  readonly section_m: number;
}

/** An O-ring port. Depths count from the spotted face. */
export interface ORingPort {
  /** Designation of its thread. */
  readonly thread: ORingThread;
  /** Its standard. */
  readonly standard: "SAE J1926-1 / ISO 11926-1" | "ISO 6149-1";
  /** Tube size in sixteenths of an inch, `-4`; undefined for metric ports. */
  readonly dash: string | undefined;
  /** Least diameter of the spotted face [m]. */
  readonly spotface_m: number;
  /** Diameter of the cone at the face [m]. */
  readonly seat_m: number;
  /** Angle of the cone from the axis, half of the whole cone [rad]. */
  readonly coneAngle_rad: number;
  /** Depth of the cone [m]. */
  readonly coneDepth_m: number;
  /** Least depth to which the thread is full [m]. */
  readonly fullThread_m: number;
  /** Least depth of the tapping drill to its full diameter, with a bottoming tap [m]. */
  readonly drillDepth_m: number;
  /** Its O-ring. */
  readonly ring: PortRing;
  /** Where the numbers are published. */
  readonly source: string;
}

/** Spotface, seat, cone's angle [degrees] and depth, full thread, drill; all mm. */
type Shape = readonly [number, number, 12 | 15, number, number, number];

function port(
  thread: ORingThread,
  [spotface, seat, angle, cone, full, drill]: Shape,
  rest: Pick<ORingPort, "standard" | "dash" | "ring" | "source">,
): ORingPort {
  return {
    thread,
    spotface_m: spotface / 1000,
    seat_m: seat / 1000,
    coneAngle_rad: angle / 180 * Math.PI,
    coneDepth_m: cone / 1000,
    fullThread_m: full / 1000,
    drillDepth_m: drill / 1000,
    ...rest,
  };
}

/** The O-ring of an inch port bears its tube size: 904 for -4. Inside and section in inches. */
function inch(
  thread: ORingThread,
  size: number,
  shape: Shape,
  [inside, section]: readonly [number, number],
): ORingPort {
  return port(thread, shape, {
    standard: "SAE J1926-1 / ISO 11926-1",
    dash: `-${size}`,
    ring: {
      name: `AS568-${900 + size}`,
      inside_m: inside * 0.0254,
      section_m: section * 0.0254,
    },
    source: "SAE J1926-1 / ISO 11926-1, ring by AS568; from memory",
  });
}

function metric(
  thread: ORingThread,
  shape: Shape,
  [inside, section]: readonly [number, number],
): ORingPort {
  return port(thread, shape, {
    standard: "ISO 6149-1",
    dash: undefined,
    ring: {
      name: `${inside} x ${section} mm`,
      inside_m: inside / 1000,
      section_m: section / 1000,
    },
    source: "ISO 6149-1, ring by ISO 6149-2; from memory",
  });
}

/**
 * O-ring ports by thread. The inch row -16 stands for completeness: no drill set here cuts it.
 *
 * Source: SAE J1926-1 (the same as ISO 11926-1) with AS568 rings, ISO 6149-1; from memory. The
 * spotface of a metric port is the wide one of its standard, as published charts differ by 1 mm.
 *
 * @example
 * ```ts
 * import { assertEquals } from "@std/assert";
 *
 * assertEquals(O_RING_PORTS["7/16-20"].dash, "-4");
 * assertEquals(O_RING_PORTS["7/16-20"].ring.name, "AS568-904");
 * ```
 */
export const O_RING_PORTS: Readonly<Record<ORingThread, ORingPort>> = {
  "5/16-24": inch("5/16-24", 2, [17, 9.1, 12, 1.9, 10, 12], [0.239, 0.064]),
  "3/8-24": inch("3/8-24", 3, [19, 10.7, 12, 1.9, 10, 12], [0.301, 0.064]),
  "7/16-20": inch("7/16-20", 4, [21, 12.4, 12, 2.4, 11.5, 14], [0.351, 0.072]),
  "1/2-20": inch("1/2-20", 5, [23, 14, 12, 2.4, 11.5, 14], [0.414, 0.072]),
  "9/16-18": inch("9/16-18", 6, [25, 15.6, 12, 2.5, 12.7, 15.5], [0.468, 0.078]),
  "3/4-16": inch("3/4-16", 8, [30, 20.6, 15, 2.5, 14.3, 17.5], [0.644, 0.087]),
  "7/8-14": inch("7/8-14", 10, [34, 23.9, 15, 2.5, 16.7, 20], [0.755, 0.097]),
  "1 1/16-12": inch("1 1/16-12", 12, [41, 29.2, 15, 3.3, 19, 23], [0.924, 0.116]),
  "1 5/16-12": inch("1 5/16-12", 16, [49, 35.5, 15, 3.3, 19, 23], [1.171, 0.116]),
  "M8x1": metric("M8x1", [17, 9.1, 12, 1.6, 10, 11.5], [6.1, 1.6]),
  "M10x1": metric("M10x1", [20, 11.1, 12, 1.6, 10, 11.5], [8.1, 1.6]),
  "M12x1.5": metric("M12x1.5", [23, 13.8, 15, 2.4, 11.5, 14], [9.3, 2.2]),
  "M14x1.5": metric("M14x1.5", [25, 15.8, 15, 2.4, 11.5, 14], [11.3, 2.2]),
  "M16x1.5": metric("M16x1.5", [28, 17.8, 15, 2.4, 13, 15.5], [13.3, 2.2]),
  "M18x1.5": metric("M18x1.5", [30, 19.8, 15, 2.4, 14.5, 17], [15.3, 2.2]),
  "M22x1.5": metric("M22x1.5", [33, 23.8, 15, 2.4, 15.5, 18], [19.3, 2.2]),
};

/**
 * Highest working pressure in the scope of ISO 6149-1 [Pa]: far above a rail's, so the port's
 * form never governs; the depth of thread in a soft bar does. Source: ISO 6149-1:2022, scope.
 *
 * @example
 * ```ts
 * import { assert } from "@std/assert";
 *
 * assert(O_RING_PORT_SCOPE_Pa.adjustable > 10 * 1e6);
 * ```
 */
export const O_RING_PORT_SCOPE_Pa: Readonly<Record<"nonadjustable" | "adjustable", number>> = {
  nonadjustable: 63e6,
  adjustable: 40e6,
};
