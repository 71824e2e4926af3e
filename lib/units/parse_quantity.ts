/** Typed text to SI. */
import { InputError } from "@/lib/basics/mod.ts";
import { BoundedMap } from "./bounded_map.ts";
import { formatNumber } from "./format_number.ts";
import { formatQuantity } from "./format_quantity.ts";
import type { Kind } from "./kind.ts";
import { KINDS } from "./kinds.ts";
import { readNumber } from "./read_number.ts";
import { takeReference } from "./reference.ts";
import { tidyText } from "./tidy_text.ts";
import { type Scale, unitScale } from "./unit_scale.ts";
import { mathjs } from "./units_ready.ts";

/** What a field asks of the quantity typed into it. */
export interface ParseOptions {
  /** The field's name, as the message begins: `Rail bore`. */
  readonly field?: string;
  /** Density [kg/m³] by which a mass flow is turned into the volume flow that is asked. */
  readonly density_kg_m3?: number;
  /** Smallest value [SI]; where missing, the kind's own. */
  readonly min?: number;
  /** Largest value [SI]; where missing, the kind's own. */
  readonly max?: number;
  /** Why the field has this `min` and `max`; follows a colon. */
  readonly because?: string;
  /** What pressures are measured from; gauge where missing. */
  readonly reference?: "gauge" | "absolute";
}

/** What became of a typed text. */
export type Parsed =
  | {
    readonly ok: true;
    /** In the SI unit of the kind. */
    readonly value: number;
    /** What was assumed to get there, to be shown. */
    readonly note?: string;
  }
  | {
    readonly ok: false;
    /** What is wrong and what to enter, to be shown at the field. */
    readonly message: string;
  };

/** What a text means, whatever the field's bounds. */
interface Reading {
  readonly parsed: { readonly ok: true; readonly value: number } | undefined;
  /** Why not, as the middle of a message. */
  readonly says: string;
  /** What to do about it, unless that is to enter the kind wanted. */
  readonly remedy?: string;
  readonly scale?: Scale;
  /** The unit as typed. */
  readonly unit?: string;
  /** What the pressure was said to be measured from. */
  readonly reference?: "gauge" | "absolute";
}

/** Longer texts are no quantities, and are not kept. */
const LONGEST = 120;
const readings = new Map<Kind, BoundedMap<Reading>>(
  (Object.keys(KINDS) as Kind[]).map((kind) => [kind, new BoundedMap<Reading>(2000)]),
);

/**
 * Reads a quantity that someone typed.
 *
 * @param text What was typed: `5/8 in`, `14mm`, `1,5 bar`, `95 lb/h`.
 * @param kind What is wanted.
 * @param options The field's name, bounds and what else it needs.
 * @returns The value in the kind's SI unit, or a message for the field. Always
 * a finite number within the bounds, or a message; no text makes it throw.
 * @throws {Error} Before {@linkcode unitsReady} is done.
 * @throws {InputError} When `options.density_kg_m3` is no density.
 *
 * @example
 * ```ts
 * import { assertEquals } from "@std/assert";
 * import { unitsReady } from "./units_ready.ts";
 *
 * await unitsReady();
 * assertEquals(parseQuantity("5/8 in", "length"), { ok: true, value: 0.015875 });
 * assertEquals(parseQuantity("12 pis", "length", { field: "Rail bore" }), {
 *   ok: false,
 *   message: 'Rail bore: "12 pis" is not a length. ' +
 *     "Enter a length with its unit, like 14 mm, 5/8 in or 0.55 in.",
 * });
 * ```
 */
export function parseQuantity(text: string, kind: Kind, options: ParseOptions = {}): Parsed {
  const cache = readings.get(kind);
  const reading = cache?.get(text) ?? readAndKeep(text, kind, cache);
  const { parsed, scale } = reading;
  if (parsed === undefined || scale === undefined) {
    return refusal(text, reading.says, kind, options, reading.remedy);
  }
  const wanted = options.reference ?? "gauge";
  if (reading.reference !== undefined && reading.reference !== wanted) {
    return refuseReference(text, reading.reference, kind, options);
  }
  if (!scale.byMass) return withinBounds(text, parsed, reading, scale, kind, options);
  return byDensity(text, parsed.value, reading, scale, kind, options);
}

function readAndKeep(
  text: string,
  kind: Kind,
  cache: BoundedMap<Reading> | undefined,
): Reading {
  mathjs();
  if (text.length > LONGEST) return refuse("is too long to be a quantity");
  const reading = read(text, kind);
  return cache?.set(text, reading) ?? reading;
}

function refuse(says: string, remedy?: string): Reading {
  return { parsed: undefined, says, ...(remedy === undefined ? {} : { remedy }) };
}

function read(text: string, kind: Kind): Reading {
  const { noun, bare } = KINDS[kind];
  const isNot = `is not ${noun}`;
  const number = readNumber(tidyText(text));
  if (number.found === "none") return refuse(isNot);
  if (number.found === "ambiguous") {
    const [whole, decimal] = number.readings;
    return refuse(
      `can be read as ${whole} or as ${decimal}, as the comma may part thousands or decimals`,
      `Enter ${whole} or ${decimal}, without the comma, and the unit.`,
    );
  }
  const { reference, unit } = kind === "pressure"
    ? takeReference(number.rest)
    : { reference: undefined, unit: number.rest.trim() };
  const typed = kind === "ratio" ? unit.replace(/^:\s*1$/, "") : unit;
  if (typed === "" && bare === undefined) return refuse("has no unit");
  const named = typed === "" ? bare ?? "" : typed;
  const scale = unitScale(named, kind);
  if (scale.found === "capitals") {
    const spellings = scale.spellings.join(" or ");
    return refuse("needs its capital letters right", `Write ${spellings}, whichever is meant.`);
  }
  if (scale.found === "other") {
    return refuse(scale.noun === undefined ? isNot : `is ${scale.noun}, not ${noun}`);
  }
  if (scale.found === "none") return refuse(isNot);
  const value = number.value * scale.above / scale.below + scale.offset;
  if (!Number.isFinite(value)) return refuse("is too large a number");
  return {
    parsed: { ok: true, value: value === 0 ? 0 : value },
    says: "",
    scale,
    unit: named === '"' ? "in" : named.replace(/^deg(?=[cfkr]$)/i, "°"),
    ...(reference === undefined ? {} : { reference }),
  };
}

function byDensity(
  text: string,
  massFlow_kg_s: number,
  reading: Reading,
  scale: Scale,
  kind: Kind,
  options: ParseOptions,
): Parsed {
  const { density_kg_m3: density } = options;
  if (density === undefined) {
    return refusal(text, "is a mass flow, not a volume flow", kind, options);
  }
  if (!(density > 0 && density < Infinity)) {
    throw new InputError("volume flow", "density_kg_m3", "must be > 0 kg/m^3", density);
  }
  const parsed = { ok: true, value: massFlow_kg_s / density } as const;
  const byVolume = { ...scale, scale: scale.scale / density };
  const bounded = withinBounds(text, parsed, reading, byVolume, kind, options);
  if (!bounded.ok) return bounded;
  const note = `${shortened(text)} is a mass flow; ` +
    `turned into a volume flow with a density of ${formatNumber(density, 4)} kg/m³.`;
  return { ok: true, value: parsed.value, note };
}

function withinBounds(
  text: string,
  parsed: { readonly ok: true; readonly value: number },
  reading: Reading,
  scale: Scale,
  kind: Kind,
  options: ParseOptions,
): Parsed {
  const info = KINDS[kind];
  const min = options.min ?? info.min;
  const max = options.max ?? info.max;
  // Not <= and >=: a slip of one rounding must not refuse the bound itself.
  const slip = 1e-12 * Math.abs(parsed.value);
  const low = parsed.value < min - slip;
  if (!low && !(parsed.value > max + slip)) return parsed;
  const bound = low ? min : max;
  const isShare = kind === "ratio" && isBare(text);
  const own = low ? info.minBecause : info.maxBecause;
  const isOwn = low ? options.min === undefined : options.max === undefined;
  const because = isOwn ? own : options.because;
  const inUnit = inward((bound - scale.offset) / scale.scale, low);
  const both = bothWays(
    `${inUnit} ${reading.unit ?? ""}`.trim().replace("-", "−"),
    bound,
    scale,
    kind,
  );
  const shown = isShare ? `${both} (${inward(bound * 100, low)} %)` : both;
  const [side, least] = low ? ["below", "lowest"] : ["above", "highest"];
  const message = `${prefix(options)}"${
    shortened(text)
  }" is ${side} the ${least} allowed, ${shown}`;
  const whole = because === undefined ? `${message}.` : `${message}: ${because}.`;
  const share = parsed.value / 100;
  const isPercent = isShare && !low && share >= min && share <= max;
  return { ok: false, message: isPercent ? `${whole} Did you mean ${text.trim()} %?` : whole };
}

/** A number alone: "40" for a ratio may be meant in percent. */
function isBare(text: string): boolean {
  return !/[^\d.,\s]/.test(text);
}

/** A bound as typed, and in the other system where that differs. */
function bothWays(
  typed: string,
  bound: number,
  scale: Scale,
  kind: Kind,
): string {
  const { inch, metric } = KINDS[kind];
  const has = (units: typeof inch): boolean =>
    units.some((unit) => Math.abs(unit.scale / scale.scale - 1) < 1e-9);
  const system = has(inch) && !has(metric) ? "metric" : "inch";
  const other = formatQuantity(bound, kind, system);
  const same = other.replace(/^[^ ]* /, "") === typed.replace(/^[^ ]* /, "");
  return same || inch === metric ? typed : `${typed} (${other})`;
}

/** A bound with four digits, rounded to the side that is allowed. */
function inward(bound: number, low: boolean): string {
  if (bound === 0) return "0";
  const step = 10 ** (Math.floor(Math.log10(Math.abs(bound))) - 3);
  const steps = bound / step;
  const whole = low ? Math.ceil(steps - 1e-6) : Math.floor(steps + 1e-6);
  return String(Number((whole * step).toPrecision(4)));
}

function refusal(
  text: string,
  says: string,
  kind: Kind,
  options: ParseOptions,
  remedy?: string,
): Parsed {
  const { noun, examples: [first, second, third], bare } = KINDS[kind];
  const withUnit = bare === undefined ? " with its unit" : "";
  const enter = remedy ?? `Enter ${noun}${withUnit}, like ${first}, ${second} or ${third}.`;
  const what = text.trim() === "" ? "nothing was entered" : `"${shortened(text)}" ${says}`;
  return { ok: false, message: `${prefix(options)}${what}. ${enter}` };
}

function refuseReference(
  text: string,
  reference: "gauge" | "absolute",
  kind: Kind,
  options: ParseOptions,
): Parsed {
  const wanted = reference === "absolute"
    ? "a gauge pressure, measured from the air around"
    : "an absolute pressure, measured from a vacuum";
  const article = reference === "absolute" ? "an" : "a";
  return refusal(text, `is ${article} ${reference} pressure`, kind, options, `Enter ${wanted}.`);
}

function prefix(options: ParseOptions): string {
  return options.field === undefined ? "" : `${options.field}: `;
}

/** What was typed on one line of at most 40 characters. */
function shortened(text: string): string {
  // deno-lint-ignore no-control-regex
  const line = text.replace(/[\s\u0000-\u001f\u007f]+/g, " ").trim().toWellFormed();
  const signs = [...line];
  return signs.length <= 40 ? line : `${signs.slice(0, 39).join("")}…`;
}
