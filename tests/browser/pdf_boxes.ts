/** What is drawn on the pages of a PDF, measured from its own drawing operators. */

/** A path's bounding box on paper. */
export interface PdfBox {
  readonly width_mm: number;
  readonly height_mm: number;
}

/** A page: its size and the boxes of its paths. */
export interface PdfPage extends PdfBox {
  readonly boxes: readonly PdfBox[];
}

/** A point is 1/72 in. */
const POINT_mm = 25.4 / 72;

/** Reads a PDF as the browser writes it: objects one by one, contents deflated. */
export async function pdfPages(bytes: Uint8Array): Promise<PdfPage[]> {
  const text = new TextDecoder("latin1").decode(bytes);
  const objects = new Map<string, { readonly head: string; readonly start: number }>();
  for (const { 1: id = "", index } of text.matchAll(/(?<=^|\n)(\d+) 0 obj\b/g)) {
    const end = text.indexOf("endobj", index);
    const stream = text.indexOf("stream", index);
    const hasStream = stream >= 0 && stream < end;
    const head = text.slice(index, hasStream ? stream : end);
    const start = hasStream ? stream + (text[stream + 6] === "\r" ? 8 : 7) : -1;
    objects.set(id, { head, start });
  }
  const pages: PdfPage[] = [];
  for (const { head } of objects.values()) {
    if (!/\/Type\s*\/Page\b/.test(head)) continue;
    const box = /\/MediaBox\s*\[([^\]]*)\]/.exec(head)?.[1]?.trim().split(/\s+/).map(Number) ?? [];
    const [left = 0, bottom = 0, right = 0, top = 0] = box;
    const content = objects.get(/\/Contents\s+(\d+)/.exec(head)?.[1] ?? "");
    if (content === undefined) throw new Error("a page without contents");
    const length = Number(/\/Length\s+(\d+)/.exec(content.head)?.[1]);
    const deflated = bytes.subarray(content.start, content.start + length);
    pages.push({
      width_mm: (right - left) * POINT_mm,
      height_mm: (top - bottom) * POINT_mm,
      boxes: boxesOf(await inflated(deflated)),
    });
  }
  return pages;
}

async function inflated(bytes: Uint8Array): Promise<string> {
  const plain = new Response(bytes.slice()).body?.pipeThrough(new DecompressionStream("deflate"));
  return new TextDecoder("latin1").decode(await new Response(plain).arrayBuffer());
}

type Matrix = readonly [number, number, number, number, number, number];

/** First one, then the other. */
function after(a: Matrix, b: Matrix): Matrix {
  return [
    a[0] * b[0] + a[1] * b[2],
    a[0] * b[1] + a[1] * b[3],
    a[2] * b[0] + a[3] * b[2],
    a[2] * b[1] + a[3] * b[3],
    a[4] * b[0] + a[5] * b[2] + b[4],
    a[4] * b[1] + a[5] * b[3] + b[5],
  ];
}

/** The boxes of all subpaths that are painted. */
function boxesOf(content: string): PdfBox[] {
  const boxes: PdfBox[] = [];
  const saved: Matrix[] = [];
  let matrix: Matrix = [1, 0, 0, 1, 0, 0];
  let numbers: number[] = [];
  let path: [number, number][][] = [];
  const place = (x = 0, y = 0): [number, number] => [
    matrix[0] * x + matrix[2] * y + matrix[4],
    matrix[1] * x + matrix[3] * y + matrix[5],
  ];
  for (const token of content.split(/\s+/)) {
    if (/^[-+]?\.?\d/.test(token)) {
      numbers.push(Number(token));
      continue;
    }
    const [a = 0, b = 0, c = 0, d = 0] = numbers;
    if (token === "q") saved.push(matrix);
    else if (token === "Q") matrix = saved.pop() ?? matrix;
    else if (token === "cm") matrix = after(numbers.slice(0, 6) as unknown as Matrix, matrix);
    else if (token === "m") path.push([place(a, b)]);
    else if (token === "l") path.at(-1)?.push(place(a, b));
    else if (token === "c") path.at(-1)?.push(place(numbers[4], numbers[5]));
    else if (token === "re") {
      path.push([place(a, b), place(a + c, b), place(a + c, b + d), place(a, b + d)]);
    } else if (/^([SsFfBb]\*?)$/.test(token)) {
      for (const points of path) boxes.push(boxOf(points));
      path = [];
    } else if (token === "n") path = [];
    numbers = [];
  }
  return boxes;
}

function boxOf(points: readonly (readonly [number, number])[]): PdfBox {
  const [xs, ys] = [points.map(([x]) => x), points.map(([, y]) => y)];
  return {
    width_mm: (Math.max(...xs) - Math.min(...xs)) * POINT_mm,
    height_mm: (Math.max(...ys) - Math.min(...ys)) * POINT_mm,
  };
}
