/** The supply at work: pressures on the way, pump against system, each operating point. */
import type { VNode } from "preact";
import { displayUnit, formatQuantity } from "@/lib/units/mod.ts";
import { DEFERS } from "@/lib/walkround/mod.ts";
import { CautionBox } from "./caution_box.ts";
import { cautionsShown, wiringCautions } from "./cautions_shown.ts";
import type { LineResults, SupplyPoint, SupplyResults } from "@/lib/evaluation/mod.ts";
import { HoleTable } from "./hole_table.ts";
import { html } from "./html.ts";
import { type NumberRow, NumberTable } from "./number_table.ts";
import { type OperatingRow, OperatingTable } from "./operating_table.ts";
import type { PlanShown } from "./plan_shown.ts";
import { PressureProfile } from "./pressure_profile.ts";
import { PumpChart } from "./pump_chart.ts";
import { quantityRow } from "./size_numbers.ts";

/** The section; nothing where the supply could not be solved at all. */
export function SupplyShown(shown: PlanShown): VNode | undefined {
  const { supply } = shown.evaluation.results;
  if (!supply) return undefined;
  return html`
    <section aria-labelledby="supply-title">
      <h2 id="supply-title">From the tank to the injectors and back</h2>
      ${!supply.isPumpKnown && html`
        <p class="note">
          The pump's curve is not known yet. Until it is, a pump stands in that gives just what is to
          be shopped for: what the engine burns and the aim on top.
        </p>
      `}
      ${profile(shown, supply, "peak")}
      <details class="again">
        <summary>The same at idle, when nearly all of the flow goes back</summary>
        ${profile(shown, supply, "idle")}
      </details>
      ${supply.isPumpKnown && PumpChart({
        curves: supply.curves.map(({ name, voltage_V, points }) => ({
          name,
          points,
          ...(voltage_V !== undefined && { voltage_V }),
        })),
        system: supply.asked,
        working: supply.points.flatMap(({ name, found }) =>
          found
            ? [{
              name,
              flow_m3_s: found.pumped_m3_s,
              pressure_Pa: found.outlet_Pa - found.inlet_Pa,
            }]
            : []
        ),
        system_units: shown.system,
      })}
      ${OperatingTable({
        rows: supply.points.map((point) => rowOf(point, shown)),
        system: shown.system,
      })}
      ${injectorTable(shown, supply)}
      ${NumberTable({ caption: "Heat, vapour and priming", rows: heatRows(shown) })}
      ${CautionBox({
        cautions: cautionsShown(shown, [...wiringCautions(shown), "hose-rating", "hose-routing"]),
        defers: DEFERS,
      })}
    </section>
  `;
}

const BOUNDS =
  "Fuel that slows down along the rail gives back none or all of the pressure that its speed took: the truth lies between";

/** Bounds of the pressure before each injector, where the fuel's speed gives back nothing or all. */
function injectorTable({ system }: PlanShown, { points }: SupplyResults): VNode | undefined {
  const found = points.find(({ id }) => id === "peak")?.found;
  if (found === undefined) return undefined;
  const several = found.injectors.some(({ rail }) => rail > 0);
  const { symbol, scale } = displayUnit("pressure", system);
  // Pascals decide here, which the usual digits would not show.
  const fine = (pressure_Pa: number): string => (pressure_Pa / scale).toFixed(4);
  return html`
    <details class="again">
      <summary>Each injector at the power peak</summary>
      ${HoleTable({
        caption:
          `Rail pressure at each injector in ${symbol}, gauge, from the feed end on. ${BOUNDS}`,
        columns: [
          { title: several ? "Rail, place" : "Place" },
          { title: "None given back", isNumber: true },
          { title: "All given back", isNumber: true },
          { title: "Flow", isNumber: true },
        ],
        rows: found.injectors.map(({ rail, at_m, pressure_Pa, recovered_Pa, flow_m3_s }) => [
          `${several ? `${rail + 1}, ` : ""}${formatQuantity(at_m, "length", system)}`,
          fine(pressure_Pa),
          fine(recovered_Pa),
          formatQuantity(flow_m3_s, "flow", system),
        ]),
      })}
    </details>
  `;
}

const WHERE = { peak: "at the power peak", idle: "at idle" } as const;

function profile(
  { evaluation, values, system }: PlanShown,
  supply: SupplyResults,
  id: "peak" | "idle",
): VNode | undefined {
  const { vapour, pressures } = evaluation.results;
  const point = supply.points.find((each) => each.id === id);
  if (point?.found === undefined) return undefined;
  const boils_Pa = vapour && pressures && vapour.tankVapour_Pa - pressures.ambient_Pa;
  return PressureProfile({
    stretches: id === "peak" ? supply.wayPeak : supply.wayIdle,
    ...(values.regulator.layout === "return" && { set_Pa: point.should_Pa }),
    ...(boils_Pa !== undefined && id === "peak" && { vapour_Pa: boils_Pa }),
    where: WHERE[id],
    system,
  });
}

const REGULATOR = {
  "holds": "pressure held",
  "shut": "regulator shut, pressure lower",
  "wide-open": "return too tight, pressure higher",
} as const;

function rowOf(point: SupplyPoint, { evaluation }: PlanShown): OperatingRow {
  const { id, name, burnt_m3_s, manifold_Pa, found, problem } = point;
  const isIdling = id === "idle" || id === "cranking";
  // Until fuel at idle is known, the supply is solved as if none were burnt.
  const isBurntKnown = !isIdling || evaluation.results.demand?.fuelIdle_kg_s !== undefined;
  const burnt = { name, ...(isBurntKnown && { burnt_m3_s }) };
  if (found === undefined) return { ...burnt, says: problem ?? "not solved" };
  return {
    ...burnt,
    ...(found.terminal_V !== undefined && { voltage_V: found.terminal_V }),
    pumped_m3_s: found.pumped_m3_s,
    returned_m3_s: found.returned_m3_s,
    rail_Pa: found.rail_Pa,
    differential_Pa: found.rail_Pa - manifold_Pa,
    says: `${REGULATOR[found.regulator]}${
      found.within === "within" || found.within === "unknown" ? "" : "; beyond the pump's figures"
    }${isBurntKnown ? "" : "; reckoned as if nothing were burnt"}`,
  };
}

function heatRows(shown: PlanShown) {
  const { heat, vapour, pump, surge, wiring, lines } = shown.evaluation.results;
  const row = quantityRow.bind(undefined, shown);
  const perHour = (rate_K_s: number | undefined): number | undefined =>
    rate_K_s === undefined ? undefined : rate_K_s * 3600;
  return [
    ...row(
      "Tank warmed by the pump, in an hour",
      perHour(heat?.byPump_K_s),
      "temperatureDifference",
      "cruising, at first: it slows as the tank gets rid of heat",
    ),
    ...row(
      "Tank warmed by what returns, in an hour",
      perHour(heat?.byReturn_K_s),
      "temperatureDifference",
      "likewise; often the larger of both, and it rests on an assumed warming",
    ),
    ...row("Time to fill feed and rails when empty", heat?.prime_s, "duration"),
    ...row("At the pump's inlet, at its lowest", vapour?.inlet_Pa, "pressure", "absolute"),
    ...row("Hottest fuel in the tank boils at", vapour?.tankVapour_Pa, "pressure", "absolute"),
    ...row("Hot fuel in the rail boils at", vapour?.soakVapour_Pa, "pressure", "absolute"),
    ...row(
      "Wire of the pump warms by",
      wiring?.warming_K,
      "temperatureDifference",
      "a single wire in still air; in a bundle more",
    ),
    ...unsettledRows(shown, lines?.unsettled),
    ...row("Flow held with one pump standing still", pump?.stalled_m3_s, "pumpFlow"),
    ...row("Lift pump brings", surge?.lift_m3_s, "pumpFlow"),
  ];
}

/** Pieces in which the flow may be laminar or turbulent: no law holds there, so both are shown. */
function unsettledRows(
  { system }: PlanShown,
  unsettled: LineResults["unsettled"] = [],
): NumberRow[] {
  return unsettled.map(({ name, low_Pa, high_Pa }) => ({
    label: `Lost in ${name}, between laminar and turbulent`,
    value: `${formatQuantity(low_Pa, "pressure", system)} to ${
      formatQuantity(high_Pa, "pressure", system)
    }`,
    note: "reckoned with a value between both",
  }));
}
