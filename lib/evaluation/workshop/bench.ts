/** An evaluated plan as the workshop sheet sees it. */
import type { Hole, Layout } from "@/lib/layout/mod.ts";
import type { PlanValues } from "@/lib/plan/mod.ts";
import { type CutMaterial, PORT_SHAPES, type PortShape } from "@/lib/thread/mod.ts";
import { formatIn, formatQuantity, type Kind } from "@/lib/units/mod.ts";
import { SENSOR_ID } from "../drill/laid.ts";
import { endThread } from "../drill/rail_spec.ts";
import type { Evaluation } from "../evaluation.ts";

/** The metals of the plan as tables of cutting speeds have them. */
const CUT_AS: Readonly<Record<PlanValues["rail"]["material"], CutMaterial>> = {
  "6061-T6": "aluminium",
  "6082-T6": "aluminium",
  AlSi10Mg: "aluminium",
  "AlSi10Mg-as-built": "aluminium",
  "304": "stainless steel",
  brass: "brass",
  steel: "mild steel",
};

/** The rail on the bench: its holes, and how the plan's numbers are written. */
export class Bench {
  /**
   * @param evaluation The evaluated plan.
   * @param values The same plan in numbers.
   * @param layout The rail laid out.
   */
  constructor(
    readonly evaluation: Evaluation,
    readonly values: PlanValues,
    readonly layout: Layout,
  ) {}

  /** Writes a quantity in the plan's units; a length always as a caliper shows it. */
  say(value: number, kind: Kind = "length"): string {
    return kind === "length"
      ? this.#length(value, { mm: 2, in: 3 })
      : formatQuantity(value, kind, this.values.sheet.units);
  }

  /** Writes a diameter as finely as drills are told apart. */
  size(diameter_m: number): string {
    return this.#length(diameter_m, { mm: 2, in: 4 });
  }

  /** Writes a limit as finely as a bore gauge reads. */
  limit(length_m: number): string {
    return this.#length(length_m, { mm: 3, in: 4 });
  }

  #length(length_m: number, decimals: { readonly mm: number; readonly in: number }): string {
    const unit = this.values.sheet.units === "metric" ? "mm" : "in";
    return formatIn(length_m, "length", unit, decimals[unit]);
  }

  /** The bar as tables of cutting speeds have it. */
  get material(): CutMaterial {
    return CUT_AS[this.values.rail.material];
  }

  /** Whether the bar is printed from powder. */
  get isPrinted(): boolean {
    return this.values.rail.material.startsWith("AlSi10Mg");
  }

  /** Whether caps are welded on. */
  get isWelded(): boolean {
    return this.values.rail.ends === "welded";
  }

  /** Whether the gallery is drilled half from each end. */
  get isFromBoth(): boolean {
    return this.gallery?.exit !== undefined && this.values.rail.drilledFrom === "both";
  }

  /** The gallery. */
  get gallery(): Hole | undefined {
    return this.layout.holes.find(({ feature }) => feature === "gallery");
  }

  /** How deep its drill goes, from where it enters [m]. */
  get galleryDepth_m(): number {
    const to_m = this.gallery?.profile.findLast(({ cut }) => cut === "bore")?.to_m ?? 0;
    return this.isFromBoth ? to_m / 2 : to_m;
  }

  /** The plugs' threads in the ends. */
  get plugs(): readonly Hole[] {
    return this.#of("plug");
  }

  /** The pockets. */
  get pockets(): readonly Hole[] {
    return this.#of("pocket");
  }

  /** The port of the pressure sensor; undefined while it can't be drilled. */
  get sensor(): Hole | undefined {
    return this.layout.holes.find(({ id }) => id === SENSOR_ID);
  }

  /** The ports besides. */
  get ports(): readonly Hole[] {
    return this.#of("port").filter(({ id }) => id !== SENSOR_ID);
  }

  /** The holes for screws through the bar. */
  get screws(): readonly Hole[] {
    return this.#of("screw");
  }

  #of(feature: Hole["feature"]): readonly Hole[] {
    return this.layout.holes.filter((hole) => hole.feature === feature);
  }

  /** The form of a port or plug. */
  shapeOf({ id, face }: Hole): PortShape | undefined {
    const shape = this.#shapeId(id, face);
    return shape === undefined ? undefined : PORT_SHAPES[shape];
  }

  #shapeId(id: string, face: Hole["face"]): PortShape["id"] | undefined {
    if (id === SENSOR_ID) return this.values.sensor.port;
    if (face === "datum-end" || face === "far-end") return endThread(this.values, face)?.id;
    const row = /^port-(\d+)$/.exec(id)?.[1];
    return row === undefined ? undefined : this.values.ports.holes[Number(row) - 1]?.thread;
  }
}

/** The ids of holes. */
export function idsOf(holes: readonly Hole[]): readonly string[] {
  return holes.map(({ id }) => id);
}

/** Titles of holes on one line, rows of numbers put together: "Pockets 1 to 4; Sensor port". */
export function titlesOf(holes: readonly Hole[]): string {
  const rows = new Map<string, number[]>();
  for (const { title } of holes) {
    const [, name = title, number] = /^(.*) (\d+)$/.exec(title) ?? [];
    rows.set(name, [...rows.get(name) ?? [], ...(number === undefined ? [] : [Number(number)])]);
  }
  return [...rows].map(([name, numbers]) => row(name, numbers)).join("; ");
}

function row(name: string, numbers: readonly number[]): string {
  const [first] = numbers;
  const last = numbers.at(-1);
  if (first === undefined || last === undefined) return name;
  if (first === last) return `${name} ${first}`;
  const isWhole = numbers.length > 2 && last - first === numbers.length - 1;
  return `${name}s ${isWhole ? `${first} to ${last}` : numbers.join(", ")}`;
}
