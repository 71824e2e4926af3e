/** Layers of a DXF file. */
import type { Layer } from "./shapes.ts";

/** Layers by what they hold, with the index of their colour; nothing is told by colour alone. */
export const DXF_LAYERS: Readonly<Record<Layer, number>> = {
  outline: 7,
  hidden: 8,
  centre: 1,
  gallery: 5,
  pockets: 3,
  ports: 6,
  screws: 4,
  threads: 30,
  hatching: 9,
  dimensions: 2,
  text: 7,
  trouble: 10,
  frame: 7,
};
