/** What the caller says of a drawing. */

/** Sizes of sheets that frames are made for, as the paper lies upright [mm]: ISO 216 and North American. */
export const PAPERS: Readonly<Record<Paper, readonly [width: number, height: number]>> = {
  A0: [841, 1189],
  A1: [594, 841],
  A2: [420, 594],
  A3: [297, 420],
  A4: [210, 297],
  Letter: [215.9, 279.4],
};

/** A size of paper. */
export type Paper = "A0" | "A1" | "A2" | "A3" | "A4" | "Letter";

/** How paper lies. */
export type Orientation = "portrait" | "landscape";

/** The data fields of the title block, ISO 7200; what isn't given is left blank for a pen. */
export interface TitleData {
  /** Whose drawing it is. */
  readonly owner?: string | undefined;
  /** Its identification number. */
  readonly number?: string | undefined;
  /** Date of issue. */
  readonly date?: string | undefined;
  /** What is drawn. */
  readonly title: string;
  /** Who approved it. */
  readonly approver?: string | undefined;
  /** Who drew it. */
  readonly creator?: string | undefined;
  /** Like "Part drawing". */
  readonly documentType?: string | undefined;
  /** Its revision index. */
  readonly revision?: string | undefined;
  /** Of the bar. */
  readonly material?: string | undefined;
  /** The general tolerance, like "ISO 2768-m". */
  readonly tolerance?: string | undefined;
  /** How many values of the plan are assumed. */
  readonly assumedCount?: number | undefined;
}

/** A hole that can't be made as it is, and why in a few words. */
export interface HoleTrouble {
  /** The hole's id. */
  readonly hole: string;
  /** Like "meets Pocket 3". */
  readonly says: string;
}

/** How a rail is to be drawn. */
export interface DrawingOptions {
  /** The paper it is printed on. */
  readonly paper: Paper;
  /** Whether figures are millimetres or inches; sheets are in millimetres either way. */
  readonly system: "metric" | "inch";
  /** ISO 5456-2; first angle for millimetres and third for inches where it isn't said. */
  readonly projection?: "first-angle" | "third-angle";
  /** What the title block says. */
  readonly title: TitleData;
  /** Holes to mark. */
  readonly troubles?: readonly HoleTrouble[];
}

/** First or third angle. */
export function projectionOf(options: DrawingOptions): "first-angle" | "third-angle" {
  return options.projection ?? (options.system === "metric" ? "first-angle" : "third-angle");
}
