/** Tools and limits of the workshop sheet in words. */
import type {
  InspectionFigure,
  ToolEquivalent,
  WorkshopTool,
  WorkshopToolKind,
} from "@/lib/evaluation/mod.ts";
import { nearestDrills } from "@/lib/thread/mod.ts";
import { formatIn, formatQuantity, formatShare, type System } from "@/lib/units/mod.ts";

const UNIT = { metric: "mm", inch: "in" } as const;

/** The number of each tool on the list, by id. */
export function toolNumbers(tools: readonly WorkshopTool[]): ReadonlyMap<string, number> {
  return new Map(tools.map(({ id }, i) => [id, i + 1]));
}

const KINDS: Readonly<Record<WorkshopToolKind, string>> = {
  drill: "Drill",
  tap: "Tap",
  "spotting drill": "Spotting drill",
  "port form tool": "Form tool for an O-ring port",
  "taper reamer": "Taper reamer",
  countersink: "Countersink for the lead-in",
  counterbore: "Counterbore",
  bore: "Reamer, boring head or form drill",
  reamer: "Reamer",
  "flexible hone": "Flexible hone",
};

/** Several tools of a kind. */
export function kindPlural(kind: WorkshopToolKind): string {
  return kind === "bore" ? "what sizes a sealing bore" : `${kind}s`;
}

/** Ids of tools that are more than their kind says. */
const ALONG: Readonly<Record<string, string>> = {
  "gallery-leader": "Long drill that leads",
  "gallery-drill": "Long drill",
  "gallery-reamer": "Long reamer",
};

/** What a tool is called. */
export function toolTitle({ id, kind, thread, included_rad }: WorkshopTool): string {
  if (kind === "tap") return `Tap ${thread ?? ""}`;
  const cone = kind === "spotting drill" && included_rad !== undefined
    ? ` of ${Math.round(included_rad / Math.PI * 180)}°`
    : "";
  const purpose = (kind === "drill" || kind === "taper reamer") && thread !== undefined
    ? ` for ${thread}`
    : "";
  return `${ALONG[id] ?? KINDS[kind]}${cone}${purpose}`;
}

/** Drills are told apart as finely as this. */
const SIZE_DECIMALS = { metric: 2, inch: 4 } as const;

/** Sizes that differ by less have one name [m]. */
const SAME_m = 1e-6;

/** A diameter; where a drill of the other system is exactly that, its name as well. */
export function toolSize(diameter_m: number, system: System): string {
  const size = formatIn(diameter_m, "length", UNIT[system], SIZE_DECIMALS[system]);
  const near = nearestDrills(diameter_m);
  const isExact = ({ error_m }: { readonly error_m: number }): boolean =>
    Math.abs(error_m) < SAME_m;
  const inch = [near.fractional, near.letter, near.number].find(isExact);
  const name = system === "inch"
    ? inch ?? (isExact(near.metric) ? near.metric : undefined)
    : isExact(near.metric)
    ? undefined
    : inch;
  return name === undefined ? size : `${size} (${name.name})`;
}

/** A drill of the shop: "23/64 in (+0.13 mm), thread height …, inside the limits". */
export function equivalentLine(
  { name, error_m, heightIso, heightUs, inside }: ToolEquivalent,
  system: System,
): string {
  const height = heightIso === undefined || heightUs === undefined
    ? []
    : [`thread height ${formatShare(heightIso)} ISO, ${formatShare(heightUs)} US`];
  const limits = inside === undefined ? [] : [inside ? "inside the limits" : "outside the limits"];
  return [`${name} (${signed(error_m, system)})`, ...height, ...limits].join(", ");
}

/** An error with its sign; none is said to be none. */
export function signed(error_m: number, system: System): string {
  if (Math.abs(error_m) < SAME_m) return "exact";
  const [unit, decimals] = system === "metric" ? ["mm", 3] as const : ["in", 4] as const;
  return `${error_m < 0 ? "−" : "+"}${formatIn(Math.abs(error_m), "length", unit, decimals)}`;
}

/** Lengths as a caliper shows them. */
const LENGTH_DECIMALS = { metric: 2, inch: 3 } as const;

/** Limits of a hole, as finely as they are measured. */
export function fineLength(length_m: number, system: System): string {
  return formatIn(length_m, "length", UNIT[system], system === "metric" ? 3 : 4);
}

/** What a measured value is held against: "57.00 ± 0.10 mm", "at least 2.00 mm". */
export function figureLimits(figure: InspectionFigure, system: System): string {
  const { kind, nominal, least, most, isFine } = figure;
  const say = (value: number): string => {
    if (kind !== "length") return formatQuantity(value, kind, system);
    // A limit of 0.1 mm stands beside a place in the same unit.
    return isFine
      ? fineLength(value, system)
      : formatIn(value, "length", UNIT[system], LENGTH_DECIMALS[system]);
  };
  if (nominal !== undefined && least !== undefined && most !== undefined) {
    return `${say(nominal)} ±\u00a0${say((most - least) / 2)}`;
  }
  const planned = nominal === undefined ? "" : `, as drawn ${say(nominal)}`;
  if (least !== undefined && most !== undefined) return `${say(least)} to ${say(most)}`;
  if (least !== undefined) return `at least ${say(least)}${planned}`;
  return most === undefined ? "" : `under ${say(most)}${planned}`;
}
