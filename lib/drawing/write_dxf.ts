/** Marks as a DXF file, by the library; it is loaded only when a file is asked for. */
import { DxfWriter, point2d, point3d, Units } from "@tarikjabiri/dxf";
import { DXF_LAYERS } from "./dxf_layers.ts";
import { hatchLines } from "./hatch.ts";
import { STROKES } from "./line_types.ts";
import type { LineType, Mark } from "./shapes.ts";

/** Names of the line types, for the dashed ones. */
const LINE_TYPES: Readonly<Partial<Record<LineType, string>>> = {
  "02.1": "DASHED_02_1",
  "04.1": "CHAIN_04_1",
};

/** Writes marks in millimetres. */
export function writeDxf(marks: readonly Mark[]): string {
  const file = new DxfWriter();
  file.setUnits(Units.Millimeters);
  for (const [type, name] of Object.entries(LINE_TYPES)) {
    const { dashes } = STROKES[type as LineType];
    file.addLType(name, name, dashes.map((each, i) => i % 2 === 0 ? each : -each));
  }
  for (const [layer, colour] of Object.entries(DXF_LAYERS)) {
    file.addLayer(layer.toUpperCase(), colour, "Continuous");
  }
  for (const mark of marks) write(file, mark);
  return file.stringify();
}

function write(file: DxfWriter, mark: Mark): void {
  const { layer } = mark;
  const lineType = "type" in mark ? LINE_TYPES[mark.type] : undefined;
  const options = { layerName: layer.toUpperCase(), ...(lineType && { lineType }) };
  switch (mark.kind) {
    case "line":
      file.addLine(point3d(...mark.from), point3d(...mark.to), options);
      return;
    case "circle":
      file.addCircle(point3d(...mark.centre), mark.radius, options);
      return;
    case "arc": {
      const turn = (deg: number) => ((deg % 360) + 360) % 360;
      const [from, to] = [turn(mark.from_deg), turn(mark.to_deg)];
      file.addArc(point3d(...mark.centre), mark.radius, from, to, options);
      return;
    }
    case "polyline":
    case "solid": {
      const isClosed = mark.kind === "solid" || mark.closed;
      file.addLWPolyline(mark.points.map((each) => ({ point: point2d(...each) })), {
        ...options,
        flags: isClosed ? 1 : 0,
      });
      return;
    }
    case "area":
      for (const line of hatchLines(mark)) {
        file.addLine(point3d(...line.from), point3d(...line.to), options);
      }
      return;
    case "text":
      writeText(file, mark, options);
  }
}

function writeText(
  file: DxfWriter,
  { at, height, anchor, turned, says }: Extract<Mark, { kind: "text" }>,
  options: { readonly layerName: string },
): void {
  const at3 = point3d(...at);
  const alignment = { start: 0, middle: 1, end: 2 }[anchor];
  file.addText(at3, height, says, {
    ...options,
    rotation: turned,
    ...(alignment > 0 && { horizontalAlignment: alignment, secondAlignmentPoint: at3 }),
  });
}
