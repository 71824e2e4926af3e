/** Reads a law without writing out the point each time. */
import type { FlowLaw, LawPoint } from "@/lib/network/mod.ts";

/** Drop and slope of a law at a flow. */
export function lawAt(law: FlowLaw, flow_m3_s: number): LawPoint {
  const at = { drop_Pa: NaN, slope_Pa_s_m3: NaN };
  law(flow_m3_s, at);
  return at;
}

/** How fast a law's drop rises about a flow, by a central difference over a share of it [Pa s/m^3]. */
export function quotientAt(law: FlowLaw, flow_m3_s: number, share = 1e-5): number {
  const [less, more] = [flow_m3_s * (1 - share), flow_m3_s * (1 + share)];
  return (lawAt(law, more).drop_Pa - lawAt(law, less).drop_Pa) / (more - less);
}
