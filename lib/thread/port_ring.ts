/** Whether an O-ring goes with the cone that it is put into. */
import { type Method, method, type MethodInput } from "@/lib/method/mod.ts";

const RING = "The ring is a circle of its section's diameter, carried round its axis";

const DIAMETER = { unit: "m", min: 0.001, max: 0.1 } as const;

/**
 * Outside diameter [m] of an O-ring that nothing stretches or presses.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example The ring of a 7/16-20 port
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * assertAlmostEquals(portRingOutside({ inside: 8.915e-3, section: 1.829e-3 }), 12.573e-3, 1e-9);
 * ```
 */
export const portRingOutside: Method<Record<"inside" | "section", MethodInput>> = method({
  id: "port-ring-outside",
  title: "Outside diameter of a free O-ring",
  inputs: {
    inside: { ...DIAMETER, says: "Inside diameter of the O-ring", symbol: "d_1" },
    section: {
      unit: "m",
      min: 5e-4,
      max: 0.01,
      says: "Diameter of the O-ring's section",
      symbol: "d_2",
    },
  },
  output: { ...DIAMETER, max: 0.12, name: "outside", says: "Outside diameter of the O-ring" },
  formula: "inside + 2 * section",
  source: RING,
  compute: ({ inside, section }) => inside + 2 * section,
});

/**
 * How much wider [m] a free O-ring is than the cone at the face. In the standards' pairs it lies
 * within 0.3 mm of nought: the ring, stretched over its stud, fills the cone's mouth and is
 * squeezed as the fitting goes in. Far from that, the ring is another port's.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example The ring of a 7/16-20 port
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * assertAlmostEquals(portRingOverSeat({ outside: 12.573e-3, seat: 12.4e-3 }), 0.173e-3, 1e-9);
 * ```
 */
export const portRingOverSeat: Method<Record<"outside" | "seat", MethodInput>> = method({
  id: "port-ring-over-seat",
  title: "O-ring's outside diameter over the cone's",
  inputs: {
    outside: { ...DIAMETER, says: "Outside diameter of the free O-ring" },
    seat: { ...DIAMETER, says: "Diameter of the cone at the face", symbol: "d_5" },
  },
  output: { name: "over", unit: "m", min: -0.1, max: 0.1, says: "Outside diameter less the seat" },
  formula: "outside - seat",
  source: RING,
  compute: ({ outside, seat }) => outside - seat,
});
