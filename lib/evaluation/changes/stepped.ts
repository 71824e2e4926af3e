/** Levers on one quantity: step by step to the next round figures, or through a list of usual ones. */
import { fieldAt } from "@/lib/plan/mod.ts";
import { type Kind, KINDS, type System } from "@/lib/units/mod.ts";
import { type Candidate, candidate, edited, type Lever } from "./lever.ts";
import { numberAt, type Start, systemAt } from "./start.ts";

/** Round figures: multiples of a step in a unit. */
export interface Step {
  /** The step, in the unit. */
  readonly size: number;
  /** The unit, as the kind is shown in. */
  readonly unit: string;
}

/** Which way a quantity is changed. */
export type Direction = "up" | "down";

/** What makes a lever of a quantity. */
export interface Stepped extends Omit<Lever, "candidates"> {
  /** Where the quantity is answered. */
  readonly path: string;
  /** What it is called, where that isn't the field's label. */
  readonly what?: string;
  /** Which way. */
  readonly to: Direction;
  /** The steps in the units of either sheet. */
  readonly steps: Readonly<Record<System, Step>>;
  /** The most steps tried; 60 unless said. */
  readonly most?: number;
}

const MOST = 60;

/** A number in a unit and its text; the text is what is typed. */
interface Figure {
  readonly text: string;
  readonly value: number;
}

/** Makes a lever of round figures beyond what the plan has. */
export function stepped(spec: Stepped): Lever {
  const { path, what, to, steps, most = MOST, ...lever } = spec;
  return {
    ...lever,
    candidates: (start) =>
      candidatesAt(start, { path, what, to, step: steps[systemAt(start, path)], most }),
  };
}

interface Way {
  readonly path: string;
  readonly what: string | undefined;
  readonly to: Direction;
  readonly step: Step;
  readonly most: number;
}

function candidatesAt(start: Start, { path, what, to, step, most }: Way): Candidate[] {
  const now = numberAt(start, path);
  const kind = kindAt(path);
  if (now === undefined || kind === undefined) return [];
  return within(path, roundFigures(now, kind, to, step, most))
    .map(({ text }) => answer(start, path, text, what));
}

/** A change of one quantity to another text. */
export function answer(start: Start, path: string, text: string, what?: string): Candidate {
  return candidate(start, { answers: { [path]: text }, edits: [edited(start, path, text, what)] });
}

/** What makes a lever of usual figures. */
export interface Listed extends Omit<Stepped, "steps" | "most"> {
  /** The usual figures in the units of either sheet, in any order. */
  readonly figures: Readonly<
    Record<System, { readonly unit: string; readonly of: readonly number[] }>
  >;
}

/** Makes a lever of the usual figures beyond what the plan has, the nearest first. */
export function listed({ path, what, to, figures, ...lever }: Listed): Lever {
  return {
    ...lever,
    candidates(start) {
      const now = numberAt(start, path);
      const kind = kindAt(path);
      if (now === undefined || kind === undefined) return [];
      const { unit, of } = figures[systemAt(start, path)];
      const beyond = of.map((number) => figure(number, kind, unit))
        .filter(({ value }) => to === "up" ? value > now * (1 + SAME) : value < now * (1 - SAME))
        .toSorted((a, b) => to === "up" ? a.value - b.value : b.value - a.value);
      return within(path, beyond).map(({ text }) => answer(start, path, text, what));
    },
  };
}

/** Share by which two figures may differ that are the same in other units [-]. */
const SAME = 1e-6;

/** The next multiples of a step beyond a value, the nearest first. */
export function roundFigures(
  now: number,
  kind: Kind,
  to: Direction,
  { size, unit }: Step,
  most: number,
): Figure[] {
  const { scale, offset = 0 } = unitOf(kind, unit);
  const steps = (now - offset) / scale / size;
  const first = to === "up" ? Math.floor(steps + SAME) + 1 : Math.ceil(steps - SAME) - 1;
  return Array.from({ length: most }, (_, i) => {
    const number = (to === "up" ? first + i : first - i) * size;
    return figure(number, kind, unit);
  });
}

/** The next multiple of a step at or above a value. */
export function roundedUp(value: number, kind: Kind, { size, unit }: Step): Figure {
  const { scale, offset = 0 } = unitOf(kind, unit);
  return figure(Math.ceil((value - offset) / scale / size - SAME) * size, kind, unit);
}

/** A number in a unit; the last bits of a product are no part of what is typed. */
function figure(number: number, kind: Kind, unit: string): Figure {
  const { scale, offset = 0 } = unitOf(kind, unit);
  const plain = Number(number.toPrecision(12));
  return { text: `${plain} ${unit}`, value: plain * scale + offset };
}

function unitOf(kind: Kind, symbol: string): { scale: number; offset?: number } {
  const { metric, inch } = KINDS[kind];
  const unit = [...metric, ...inch].find((each) => each.symbol === symbol);
  if (unit === undefined) throw new RangeError(`${kind} is not shown in ${symbol}`);
  return unit;
}

function kindAt(path: string): Kind | undefined {
  const field = fieldAt(path);
  return field?.type === "quantity" ? field.kind : undefined;
}

/** The figures that the field takes. */
function within(path: string, figures: readonly Figure[]): Figure[] {
  const field = fieldAt(path);
  if (field?.type !== "quantity") return [];
  const { min, max } = field;
  const room = 1e-9 * Math.abs(max);
  return figures.filter(({ value }) => value >= min - room && value <= max + room);
}
