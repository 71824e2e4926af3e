/** The pieces that a run of the supply is put together from, as rows of a list. */
import type { Condition, Field } from "./field.ts";

/** Each piece with how the page says it. */
export const PIECES = {
  hose: "hose",
  corrugated: "corrugated hose",
  tube: "tube",
  straight: "straight fitting",
  adapter: "adapter",
  bulkhead: "bulkhead fitting",
  "elbow-45-swept": "45° elbow, swept",
  "elbow-90-swept": "90° elbow, swept",
  "elbow-180-swept": "180° elbow, swept",
  "elbow-45-forged": "45° elbow, forged",
  "elbow-90-forged": "90° elbow, forged",
  "elbow-180-forged": "180° elbow, forged",
  "tee-run": "tee, straight through",
  "tee-branch": "tee, into the side",
  reducer: "reducer or step of bore",
  barb: "barb",
  "check-valve": "check valve",
  filter: "filter",
  "quick-connector": "quick connector",
  "ethanol-sensor": "ethanol content sensor",
  other: "other part with a stated loss",
} as const;

/** The word of a piece. */
export type PieceName = keyof typeof PIECES;

/** Pieces that have a length along which they lose. */
export const LONG: ReadonlySet<string> = new Set<PieceName>(["hose", "corrugated", "tube"]);

/** Pieces that lose what their maker states, whatever their bore. */
export const RATED: ReadonlySet<string> = new Set<PieceName>([
  "check-valve",
  "filter",
  "quick-connector",
  "ethanol-sensor",
  "other",
]);

/** True for a row that is still blank, so that its boxes are offered, and for the pieces named. */
const forPieces = (isOne: (piece: string) => boolean): Condition => (_, row) => {
  const piece = row.word("piece");
  return piece === undefined || isOne(piece);
};
const isRated = forPieces((piece) => RATED.has(piece));
const hasBore = forPieces((piece) => !RATED.has(piece));
const isFilter: Condition = (_, row) => row.word("piece") === "filter";

const STATED = "only a part with a stated loss has it";
const OF_FILTER = "only a filter has it";

/** The fields of a row. */
export const PIECE_FIELDS = {
  piece: {
    type: "choice",
    label: "Piece",
    hint: "In the order of the flow",
    optional: true,
    options: PIECES,
  },
  size: {
    type: "choice",
    label: "Size",
    hint: "Dash size; its bore follows from the family of hose",
    optional: true,
    when: hasBore,
    otherwise: "the stated loss holds whatever the bore",
    options: { "-4": "-4", "-6": "-6", "-8": "-8", "-10": "-10", "-12": "-12", "-16": "-16" },
  },
  bore: {
    type: "quantity",
    kind: "length",
    label: "Bore",
    hint: "Measured, like 8.7 mm; counts over the size, and both blank means the bore of the run",
    optional: true,
    when: hasBore,
    otherwise: "the stated loss holds whatever the bore",
    min: 0.002,
    max: 0.04,
    because: "2 to 40 mm",
  },
  length: {
    type: "quantity",
    kind: "length",
    label: "Length",
    hint: "Of hose or tube, like 1.2 m or 48 in",
    optional: true,
    when: forPieces((piece) => LONG.has(piece)),
    otherwise: "only hose and tube have a length that counts",
    min: 0,
    max: 20,
    because: "0 to 20 m",
  },
  rise: {
    type: "quantity",
    kind: "length",
    label: "Rise",
    hint: "Outlet above inlet, like 0.3 m; below it with a minus",
    optional: true,
    min: -3,
    max: 3,
    because: "-3 to 3 m is what a vehicle is high",
  },
  count: {
    type: "count",
    label: "Count",
    hint: "Alike fittings one after another, like 2; blank means 1",
    optional: true,
    when: forPieces((piece) => !LONG.has(piece) && !RATED.has(piece)),
    otherwise: "only fittings are counted",
    min: 1,
    max: 12,
    because: "more of a kind go into a second row",
  },
  flow: {
    type: "quantity",
    kind: "pumpFlow",
    label: "Flow",
    hint: "At which the loss is stated, like 300 L/h; filters, valves and other parts",
    optional: true,
    when: isRated,
    otherwise: STATED,
    min: 2e-7,
    max: 2e-3,
    because: "0.72 to 7200 L/h",
  },
  loss: {
    type: "quantity",
    kind: "pressure",
    label: "Loss",
    hint: "Pressure lost at that flow, clean, like 20 kPa",
    optional: true,
    when: isRated,
    otherwise: STATED,
    min: 10,
    max: 5e5,
    because: "0.1 mbar to 5 bar",
  },
  flow2: {
    type: "quantity",
    kind: "pumpFlow",
    label: "Second flow",
    hint: "A filter's other stated flow; two points show how its loss grows",
    optional: true,
    when: isFilter,
    otherwise: OF_FILTER,
    min: 2e-7,
    max: 2e-3,
    because: "0.72 to 7200 L/h",
  },
  loss2: {
    type: "quantity",
    kind: "pressure",
    label: "Second loss",
    hint: "Pressure lost at the second flow",
    optional: true,
    when: isFilter,
    otherwise: OF_FILTER,
    min: 10,
    max: 5e5,
    because: "0.1 mbar to 5 bar",
  },
  dirtyLoss: {
    type: "quantity",
    kind: "pressure",
    label: "Loss when due",
    hint: "A filter's loss at the first flow when it is due for change",
    optional: true,
    when: isFilter,
    otherwise: OF_FILTER,
    min: 10,
    max: 5e5,
    because: "0.1 mbar to 5 bar",
  },
  fineness: {
    type: "quantity",
    kind: "length",
    label: "Fineness",
    hint: "What a filter holds back, like 10 µm",
    optional: true,
    when: isFilter,
    otherwise: OF_FILTER,
    min: 1e-6,
    max: 2e-4,
    because: "1 to 200 µm",
  },
} as const satisfies Readonly<Record<string, Field>>;
