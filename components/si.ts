/** Numbers in SI as the working and the method pages write them. */
import type { Limit } from "@/lib/basics/mod.ts";
import { formatNumber, formatQuantity, type Kind, type System } from "@/lib/units/mod.ts";

const SUPERSCRIPTS = "⁰¹²³⁴⁵⁶⁷⁸⁹";

/** A declared unit as it is printed: "kg/m³" for `kg/m^3`, nothing for `-`. */
export function unitText(unit: string): string {
  if (unit === "-") return "";
  return unit.replaceAll("ohm", "Ω").replaceAll(
    /\^(-?)(\d+)/g,
    (_, sign: string, digits: string) =>
      (sign && "⁻") + [...digits].map((digit) => SUPERSCRIPTS[Number(digit)]).join(""),
  );
}

/** A number with its SI unit. */
export function showSi(value: number, unit: string): string {
  return `${formatNumber(value, 4)} ${unitText(unit)}`.trim();
}

/** What a unit can only mean; kelvins and turns may be several things and stay as they are. */
const KIND_OF: Readonly<Record<string, Kind>> = {
  Pa: "pressure",
  m: "length",
  "m^2": "area",
  "m^3": "volume",
  "m^3/s": "flow",
  "kg/s": "massFlow",
  "kg/J": "bsfc",
  W: "power",
  s: "duration",
};

/** The same number in the plan's units: "= 3.00 bar"; nothing where it would say the same again. */
export function inPlanUnits(value: number, unit: string, system: System): string | undefined {
  const kind = KIND_OF[unit];
  if (kind === undefined) return undefined;
  const shown = formatQuantity(value, kind, system);
  return shown.endsWith(` ${unitText(unit)}`) ? undefined : `= ${shown}`;
}

/** Where a number is valid: "from 600 to 1100 kg/m³". */
export function showRange({ min, max, open, unit }: Limit): string {
  const end = unitText(unit);
  const low = Number.isFinite(min) && `${open ? "above" : "from"} ${formatNumber(min)}`;
  const high = Number.isFinite(max) && `to ${formatNumber(max)}`;
  return [low, high, end].filter(Boolean).join(" ");
}
