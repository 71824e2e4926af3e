/** Wires as they are sold: what they resist, how thick they are, what they bear. */
import { awgDiameter, conductorResistance, STRANDING, wireArea } from "./awg.ts";
import { COPPER_RESISTIVITY_ohm_m } from "./copper.ts";

/** Metric wires that {@linkcode WIRES} knows, by the area of the copper. */
export type MetricWire =
  | "0.75 mm2"
  | "1 mm2"
  | "1.5 mm2"
  | "2.5 mm2"
  | "4 mm2"
  | "6 mm2"
  | "10 mm2"
  | "16 mm2";

/** American gauges that {@linkcode WIRES} knows. */
export type GaugeWire = "AWG 18" | "AWG 16" | "AWG 14" | "AWG 12" | "AWG 10" | "AWG 8";

/** Sizes that {@linkcode WIRES} knows. */
export type WireSize = MetricWire | GaugeWire;

/** A wire: fine-stranded copper in insulation for vehicles. */
export interface Wire {
  /** Resistance of a metre at 20 °C [ohm/m]. */
  readonly resistance20_ohm_m: number;
  /** Area of the copper; of a metric wire its nominal one [m^2]. */
  readonly area_m2: number;
  /** Diameter over the insulation [m]. */
  readonly outside_m: number;
  /** Current that it bears in a small bundle of a vehicle, cautiously [A]. */
  readonly rating_A: number;
  /** What it is, in words. */
  readonly says: string;
  /** Where the numbers come from. */
  readonly source: string;
}

const METRIC_SOURCE = "Resistance: IEC 60228, class 5, plain, the largest allowed. " +
  "Outside: ISO 6722 thin wall, the largest allowed; 16 mm² from memory. " +
  "Rating: IEC 60204-1 and IEC 60364-5-52, cable in conduit (B2) at 40 °C with PVC of 70 °C, " +
  "below 4 mm² from memory; for wires of vehicles common practice, no source";

const GAUGE_SOURCE = "Resistance: ASTM B258 and IEC 60028 with 2 % for stranding. " +
  "Outside: SAE J1128 GXL, from a data sheet. " +
  "Rating: NFPA 70 section 240.4(D), AWG 8 table 310.16 at 60 °C from memory; " +
  "for wires of vehicles common practice, no source";

/** A metric wire by area [mm^2], resistance [mohm/m], outside [mm] and rating [A]. */
function metric(
  area: number,
  resistance: number,
  outside: number,
  rating_A: number,
): Wire {
  return {
    resistance20_ohm_m: resistance / 1e3,
    area_m2: area / 1e6,
    outside_m: outside / 1e3,
    rating_A,
    says: `${area} mm² copper of fine strands, thin wall`,
    source: METRIC_SOURCE,
  };
}

/** A gauge by number, outside [mm] and rating [A]. */
function gauge(number: number, outside: number, rating_A: number): Wire {
  const area_m2 = wireArea({ diameter: awgDiameter({ gauge: number }) });
  return {
    resistance20_ohm_m: conductorResistance({
      resistivity: COPPER_RESISTIVITY_ohm_m,
      area: area_m2,
      stranding: STRANDING,
    }),
    area_m2,
    outside_m: outside / 1e3,
    rating_A,
    says: `AWG ${number} copper of strands, ${(area_m2 * 1e6).toPrecision(2)} mm²`,
    source: GAUGE_SOURCE,
  };
}

/** Metric wires, thinnest first. */
const METRIC: Readonly<Record<MetricWire, Wire>> = {
  "0.75 mm2": metric(0.75, 26.0, 1.9, 8.5),
  "1 mm2": metric(1, 19.5, 2.1, 10.1),
  "1.5 mm2": metric(1.5, 13.3, 2.4, 13.1),
  "2.5 mm2": metric(2.5, 7.98, 3.0, 17.4),
  "4 mm2": metric(4, 4.95, 3.7, 23),
  "6 mm2": metric(6, 3.30, 4.3, 30),
  "10 mm2": metric(10, 1.91, 6.0, 40),
  "16 mm2": metric(16, 1.21, 7.2, 54),
};

/** American gauges, thinnest first. */
const GAUGES: Readonly<Record<GaugeWire, Wire>> = {
  "AWG 18": gauge(18, 2.6, 7),
  "AWG 16": gauge(16, 3.0, 10),
  "AWG 14": gauge(14, 3.5, 15),
  "AWG 12": gauge(12, 4.1, 20),
  "AWG 10": gauge(10, 4.8, 30),
  "AWG 8": gauge(8, 5.9, 40),
};

/**
 * Wires by size, metric and then gauges, each family thinnest first.
 *
 * Every rating lies below what warms a single wire in still air by 45 K, as from 55 °C to
 * the 100 °C that insulation of class B bears. Sources: in each entry.
 *
 * @example
 * ```ts
 * import { assertAlmostEquals, assertEquals } from "@std/assert";
 *
 * assertAlmostEquals(WIRES["2.5 mm2"].resistance20_ohm_m, 7.98e-3, 1e-9);
 * assertEquals(WIRES["AWG 12"].rating_A, 20);
 * ```
 */
export const WIRES: Readonly<Record<WireSize, Wire>> = { ...METRIC, ...GAUGES };

const FAMILIES = [Object.keys(METRIC), Object.keys(GAUGES)] as readonly (readonly WireSize[])[];

/**
 * The next thicker wire of the same family.
 *
 * @param size A size.
 * @returns The next thicker one, or undefined after the thickest.
 *
 * @example
 * ```ts
 * import { assertEquals } from "@std/assert";
 *
 * assertEquals(nextWire("2.5 mm2"), "4 mm2");
 * assertEquals(nextWire("AWG 12"), "AWG 10");
 * assertEquals(nextWire("AWG 8"), undefined);
 * ```
 */
export function nextWire(size: WireSize): WireSize | undefined {
  for (const family of FAMILIES) {
    const at = family.indexOf(size);
    if (at >= 0) return family[at + 1];
  }
  return undefined;
}
