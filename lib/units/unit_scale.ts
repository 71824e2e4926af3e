/** A typed unit turned into a scale to SI. */
import type { Unit } from "mathjs";
import { KINDS } from "./kinds.ts";
import type { Kind } from "./kind.ts";
import { readUnit, type Term } from "./read_unit.ts";
import { mathjs } from "./units_ready.ts";

/** SI value = typed number * above / below + offset. */
export interface Scale {
  readonly found: "scale";
  /** SI value of one unit: `above / below`. */
  readonly scale: number;
  /** With `below`, whole numbers where there are any, so that 1.5 in is the nearest to 0.0381 m. */
  readonly above: number;
  /** A power of ten. */
  readonly below: number;
  /** SI value of zero. */
  readonly offset: number;
  /** A mass flow where a volume flow is asked: the scale is to kg/s. */
  readonly byMass: boolean;
}

/** What a typed unit is worth, or why nothing. */
export type UnitScale =
  | Scale
  /** A unit, but of something else; `noun` says of what, where that is known. */
  | { readonly found: "other"; readonly noun: string | undefined }
  | { readonly found: "capitals"; readonly spellings: readonly string[] }
  | { readonly found: "none" };

const NONE: UnitScale = { found: "none" };
/** In the order in which a dimension that two share is named. */
const ALL = (Object.keys(KINDS) as Kind[]).filter((kind) =>
  kind !== "temperatureDifference" && KINDS[kind].readAs === undefined
);
const CLAIMING: readonly Kind[] = [
  ...ALL.filter((kind) => KINDS[kind].part !== undefined),
  ...ALL.filter((kind) => KINDS[kind].part === undefined),
];

/**
 * Finds what a typed unit is worth in the SI unit of a kind.
 *
 * @param text The tidied unit.
 * @param wanted The kind wanted.
 */
export function unitScale(text: string, wanted: Kind): UnitScale {
  const kind = KINDS[wanted].readAs ?? wanted;
  const own = scaleWith(text, kind, KINDS[kind].reads);
  if (own.found === "scale" || KINDS[kind].reads === undefined) return own;
  // "lb" is read as a force in a pressure; if that makes none, as what it is.
  const plain = scaleWith(text, kind, undefined);
  return plain.found === "none" ? own : plain;
}

function scaleWith(
  text: string,
  kind: Kind,
  reads: Readonly<Record<string, string>> | undefined,
): UnitScale {
  const read = readUnit(text, reads);
  if (read.found !== "terms") return read;
  const { terms, factor } = read;
  if (terms.length === 0) {
    if (KINDS[kind].si !== "-") return { found: "other", noun: KINDS.ratio.noun };
    return madeOf(factor, 0, false);
  }
  try {
    return scaleOf(terms, kind);
  } catch {
    // mathjs throws for a unit it does not know.
    return NONE;
  }
}

function scaleOf(terms: readonly Term[], kind: Kind): UnitScale {
  const math = mathjs();
  const text = mathjsText(terms, kind === "temperature");
  const unit = math.unit(1, text);
  const claimed = CLAIMING.filter((other) =>
    KINDS[other].si !== "-" && unit.equalBase(siUnit(other)) && hasPart(terms, other)
  );
  const asVolume = kind === "flow" && claimed[0] === "massFlow";
  const wanted: Kind = asVolume ? "massFlow" : kind;
  const fits = wanted === "temperatureDifference"
    ? claimed[0] === "temperature"
    : claimed[0] === wanted;
  if (!fits) return { found: "other", noun: claimed[0] && KINDS[claimed[0]].noun };
  const { si } = KINDS[wanted];
  // Asking for the offset of a unit without one would only add rounding.
  const offset = text.startsWith("deg") && kind === "temperature"
    ? math.unit(0, text).toNumber(si)
    : 0;
  const scale = offset === 0 ? unit.toNumber(si) : degreeSize(text);
  if (!Number.isFinite(scale)) return NONE;
  return madeOf(scale, offset, asVolume);
}

function madeOf(given: number, offset: number, byMass: boolean): Scale {
  // mathjs may be off in the last bit of a product of units.
  const scale = Number(given.toPrecision(15));
  const rest = { found: "scale", scale, offset, byMass } as const;
  for (let below = 1; below <= 1e9; below *= 10) {
    const above = Number((scale * below).toPrecision(15));
    if (Number.isInteger(above) && above !== 0) return { ...rest, above, below };
  }
  return { ...rest, above: scale, below: 1 };
}

/** The size of one degree of a temperature scale [K], which mathjs gives for differences only. */
function degreeSize(text: string): number {
  return text.startsWith("degF") ? 5 / 9 : 1;
}

/** A term of each unit; degrees as differences, unless they are read on a thermometer. */
function mathjsText(terms: readonly Term[], thermometer: boolean): string {
  const alone = thermometer && terms.length === 1 && terms[0]?.power === 1;
  return terms.map(({ unit, power }) => {
    const name = alone ? unit : DEGREES[unit] ?? unit;
    return power === 1 ? name : `${name}^${power}`;
  }).join(" ");
}

const DEGREES: Readonly<Record<string, string>> = { degC: "K", degF: "degR" };

const siUnits = new Map<Kind, Unit>();

function siUnit(kind: Kind): Unit {
  let unit = siUnits.get(kind);
  if (unit === undefined) {
    unit = mathjs().unit(1, KINDS[kind].si);
    siUnits.set(kind, unit);
  }
  return unit;
}

/** Whether one of the units is of the kind that a kind must hold. */
function hasPart(terms: readonly Term[], kind: Kind): boolean {
  const { part } = KINDS[kind];
  if (part === undefined) return true;
  const math = mathjs();
  const si = siUnit(part);
  return terms.some(({ unit }) => math.unit(1, unit).equalBase(si));
}
