/** Every method, by the room it lives in. */
import * as engine from "@/lib/engine/mod.ts";
import * as flow from "@/lib/flow/mod.ts";
import * as fuel from "@/lib/fuel/mod.ts";
import * as injector from "@/lib/injector/mod.ts";
import * as inspect from "@/lib/inspect/mod.ts";
import * as layout from "@/lib/layout/mod.ts";
import * as line from "@/lib/line/mod.ts";
import { type AnyMethod, isMethod } from "@/lib/method/mod.ts";
import * as proof from "@/lib/proof/mod.ts";
import * as rail from "@/lib/rail/mod.ts";
import * as seal from "@/lib/seal/mod.ts";
import * as sensor from "@/lib/sensor/mod.ts";
import * as strength from "@/lib/strength/mod.ts";
import * as supply from "@/lib/supply/mod.ts";
import * as thread from "@/lib/thread/mod.ts";
import * as wiring from "@/lib/wiring/mod.ts";

/** The methods of one subject. */
export interface Chapter {
  /** The room's name. */
  readonly id: string;
  /** What the chapter is about. */
  readonly title: string;
  /** Its methods, in the order that the room exports them. */
  readonly methods: readonly AnyMethod[];
}

function chapter(id: string, title: string, room: object): Chapter {
  return { id, title, methods: Object.values(room).filter(isMethod) };
}

/** The book, in the order of the work. */
export const BOOK: readonly Chapter[] = [
  chapter("fuel", "Fuels", fuel),
  chapter("engine", "Fuel and air need of the engine", engine),
  chapter("flow", "Flow in pipes and through holes", flow),
  chapter("line", "Hoses, tubes and fittings", line),
  chapter("injector", "Injectors", injector),
  chapter("rail", "The rail", rail),
  chapter("wiring", "Wiring of the pump", wiring),
  chapter("supply", "Pump, regulator and supply", supply),
  chapter("thread", "Threads, drills and ports", thread),
  chapter("sensor", "Sensors", sensor),
  chapter("seal", "O-rings and materials", seal),
  chapter("strength", "Walls and loads", strength),
  chapter("inspect", "Inspection", inspect),
  chapter("layout", "The rail as geometry", layout),
  chapter("proof", "Leak tests", proof),
];

const BY_ID: ReadonlyMap<string, AnyMethod> = new Map(
  BOOK.flatMap((c) => c.methods.map((m) => [m.id, m] as const)),
);

/**
 * Finds a method by its id.
 *
 * @param id As in its address: `pressure-jump`.
 * @returns The method, or undefined when no method has that id.
 *
 * @example
 * ```ts
 * import { assertEquals } from "@std/assert";
 *
 * assertEquals(methodById("no-such-method"), undefined);
 * ```
 */
export function methodById(id: string): AnyMethod | undefined {
  return BY_ID.get(id);
}
