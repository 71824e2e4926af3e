/** Conditions that several fields share, each with what is said where it does not hold. */
import type { Condition } from "./field.ts";

/** A condition, and why a field is not asked where it does not hold. */
interface Asked {
  readonly when: Condition;
  readonly otherwise: string;
}

/** The pump has a motor and wires. */
export const ELECTRIC: Asked = {
  when: (v) => v.word("pump.drive") !== "engine",
  otherwise: "the engine drives the pump",
};

/** The pump turns with the engine. */
export const ENGINE_DRIVEN: Asked = {
  when: (v) => v.word("pump.drive") === "engine",
  otherwise: "the pump is electric",
};

/** The pump draws through a run of its own. */
export const IN_LINE: Asked = {
  when: (v) => v.word("pump.place") !== "tank",
  otherwise: "the pump sits in the tank",
};

/** Fuel runs back to the tank by a line of its own. */
export const RETURNS: Asked = {
  when: (v) => v.word("regulator.layout") !== "dead-ended" || v.word("regulator.place") === "feed",
  otherwise: "nothing returns from a dead-ended rail with its regulator at the tank",
};

/** The feed ends before the rail: where rails part, or at a regulator in it. */
export const BRANCHES: Asked = {
  when: (v) =>
    v.word("regulator.place") === "feed" ||
    ((v.number("rail.count") ?? 1) > 1 && v.word("rail.connection") !== "series"),
  otherwise: "the feed goes to the rail itself",
};

/** Fuel crosses from one rail to another. */
export const CROSSES: Asked = {
  when: (v) => ["series", "loop"].includes(v.word("rail.connection") ?? ""),
  otherwise: "no rail is fed through another",
};

/** There is more than one rail. */
export const SEVERAL_RAILS: Asked = {
  when: (v) => (v.number("rail.count") ?? 1) > 1,
  otherwise: "there is one rail",
};

/** The bar's section is neither rectangular nor round. */
export const OWN_SECTION: Asked = {
  when: (v) => v.word("rail.shape") === "own",
  otherwise: "the bar is rectangular or round",
};

/** The gallery stops short of the far end. */
export const BLIND: Asked = {
  when: (v) => v.word("rail.ends") === "blind",
  otherwise: "the gallery goes right through",
};

/** The gallery's open ends are tapped. */
export const PLUGGED: Asked = {
  when: (v) => v.word("rail.ends") !== "welded",
  otherwise: "caps are welded on",
};

/** There is more than one pump. */
export const SEVERAL_PUMPS: Asked = {
  when: (v) => (v.number("pump.count") ?? 1) > 1,
  otherwise: "there is one pump",
};

/** A lift pump fills a surge tank. */
export const LIFTED: Asked = {
  when: (v) => v.word("lift.present") === "lift",
  otherwise: "there is no lift pump",
};

/** The pump is slowed while little is burnt. */
export const SLOWED: Asked = {
  when: (v) => v.word("pump.control") === "reduced",
  otherwise: "the pump runs at full voltage",
};
