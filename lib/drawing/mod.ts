/**
 * The rail on paper: views, sections, figures and sheets as plain shapes in millimetres, and the
 * same shapes as a DXF file.
 *
 * @module
 */
export { dxfOf, dxfShapes } from "./dxf.ts";
export { DXF_LAYERS } from "./dxf_layers.ts";
export { drawingOverview } from "./drawing_overview.ts";
export { hatchLines } from "./hatch.ts";
export { LETTERING, type Stroke, STROKES, TEXT_mm } from "./line_types.ts";
export {
  type DrawingOptions,
  type HoleTrouble,
  type Orientation,
  type Paper,
  PAPERS,
  type TitleData,
} from "./options.ts";
export { type Box, boxOf, widthOf } from "./boxes.ts";
export { type HoleListed, type HoleListing, holeListing } from "./hole_listing.ts";
export { frameBox, sizeOf } from "./frame.ts";
export { largestScale, SCALES } from "./scale.ts";
export { type DrawingSheet, type SheetKind } from "./sheet.ts";
export { drawingSheets } from "./sheets.ts";
export {
  type Arc,
  type Area,
  type Circle,
  type Dimension,
  type Layer,
  type Line,
  type LineType,
  type Mark,
  marksOf,
  type Measure,
  type Point,
  type Polyline,
  type Shape,
  type Solid,
  type Text,
  type Trouble,
} from "./shapes.ts";
