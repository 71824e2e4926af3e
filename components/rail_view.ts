/**
 * A side view of the rail: bar, gallery, pockets, sensor port, and their places from one end.
 *
 * Lines by ISO 128 (wide outlines, narrow dashes for hidden edges, narrow chains
 * for axes), running dimensions from one datum by ISO 129-1.
 */
import type { VNode } from "preact";
import { formatIn, type System } from "@/lib/units/mod.ts";
import { fast } from "./fast.ts";
import { html } from "./html.ts";

/** A sensor port as the drawing has it. Depths from its face. */
export interface PortDrawn {
  /** Its place on the face opposite the injectors, or `end` for the far end. */
  readonly at_m: number | "end";
  /** Of the tapping drill. */
  readonly bore_m: number;
  /** Where the wide hole ends in a cone; without it the hole goes into the gallery. */
  readonly seat?: {
    readonly from_m: number;
    readonly to_m: number;
    /** Diameter of the pilot that goes on into the gallery. */
    readonly pilot_m: number;
  } | undefined;
}

/** What {@linkcode RailView} shows. Lengths in metres, places from the datum end. */
export interface RailViewProps {
  readonly length_m: number;
  /** Across the injectors' axis. */
  readonly height_m: number;
  /** Of the gallery. */
  readonly bore_m: number;
  readonly pocketBore_m: number;
  /** Places of the injectors. */
  readonly stations_m: readonly number[];
  /** The sensor port. */
  readonly port?: PortDrawn | undefined;
  readonly system: System;
  /** Like "1:1"; "not to scale" if left out. */
  readonly scale?: string | undefined;
}

/** The drawing. Its dimensions are written, not to be measured. */
export function RailView(props: RailViewProps): VNode {
  const { length_m, bore_m, pocketBore_m, stations_m, system, scale } = props;
  const unit = system === "metric" ? "mm" : "in";
  const long = (value_m: number): string => formatIn(value_m, "length", unit);
  const text = length_m * 1000 / TEXTS_PER_LENGTH;
  const figures = Math.max(...[...stations_m, length_m].map((each) => figure(long(each)).length));
  const outside = text * (4 + 0.62 * figures);
  const frame = [
    -4 * text,
    -outside,
    length_m * 1000 + 8 * text,
    props.height_m * 1000 + 2 * outside,
  ];
  return html`
    <figure class="rail-view">
      <div class="scroll" tabindex="0" role="group" aria-label="Drawing of the rail">
        <svg
          viewBox=${frame.map(round).join(" ")}
          font-size=${round(text)}
          role="img"
          aria-label=${`Rail ${long(length_m)} long with a gallery of ${
            long(bore_m)
          }, injectors at ${stations_m.map(long).join(", ")} from the datum end`}
        >
          ${outline(props, text)} ${dimensions(props, text, (value_m) => figure(long(value_m)))}
        </svg>
      </div>
      <figcaption>
        Side view, ${scale === undefined ? "not to scale" : `scale ${scale}`}, in ${unit === "mm"
          ? "millimetres"
          : "inches"}. Places run from the datum end (circle). Injector pockets: ${stations_m
          .length} × ${"Ø"}${figure(
            long(pocketBore_m),
          )}. Go by the figures, do not measure the drawing.
      </figcaption>
    </figure>
  `;
}

/** The text is sized by the length, so that it can be read when the drawing is fitted to a page. */
const TEXTS_PER_LENGTH = 44;

function round(value: number): string {
  return String(Math.round(value * 100) / 100);
}

/** The number without its unit, which the caption says. */
function figure(shown: string): string {
  return shown.slice(0, shown.indexOf(" "));
}

/** Bar, gallery, pockets and port; millimetres, the bar's upper left corner at the origin. */
function outline(props: RailViewProps, text: number): VNode {
  const [length, height, bore, pocket] = [
    props.length_m,
    props.height_m,
    props.bore_m,
    props.pocketBore_m,
  ].map((each) => each * 1000) as [number, number, number, number];
  const middle = height / 2;
  const [ceiling, floor] = [middle - bore / 2, middle + bore / 2];
  const { port } = props;
  return fast`<rect class="bar" x="0" y="0" width="${round(length)}" height="${round(height)}"/>
    ${[ceiling, floor].map((y) => line("hidden", 0, y, length, y))}
    ${line("axis", 0, middle, length, middle)}
    ${line("thin", -text, middle, 0, middle)}${line("thin", length, middle, length + text, middle)}
    ${
    props.stations_m.map((at_m) => {
      const x = at_m * 1000;
      return [
        hole(x, pocket, height, floor),
        line("axis", x, floor - text / 2, x, height),
        line("thin", x, height, x, height + text),
      ];
    })
  }
    ${
    port && (port.at_m === "end"
      ? fast`<text x="${round(length + 0.5 * text)}" y="${
        round(height + 1.2 * text)
      }">port in this end</text>`
      : [
        portHole(port, port.at_m * 1000, ceiling),
        line("axis", port.at_m * 1000, 0, port.at_m * 1000, ceiling + text / 2),
        line("thin", port.at_m * 1000, -text, port.at_m * 1000, 0),
      ])
  }`;
}

/** A hole across the bar, from a face to a depth. */
function hole(x: number, bore: number, face: number, depth: number): VNode {
  const [left, right] = [x - bore / 2, x + bore / 2].map(round);
  return fast`<path class="hidden" d="M${left} ${round(face)}V${round(depth)}H${right}V${
    round(face)
  }"/>`;
}

/** The port from the upper face: a plain hole, or a wide one down to its seat and a pilot from there. */
function portHole({ bore_m, seat }: PortDrawn, x: number, gallery: number): VNode {
  if (seat === undefined) return hole(x, bore_m * 1000, 0, gallery);
  const [left, right] = [x - bore_m * 500, x + bore_m * 500].map(round);
  const [inner, outer] = [x - seat.pilot_m * 500, x + seat.pilot_m * 500].map(round);
  const [from, to] = [round(seat.from_m * 1000), round(seat.to_m * 1000)];
  const down = `M${left} 0V${from}L${inner} ${to}V${round(gallery)}`;
  return fast`<path class="hidden" d="${down}H${outer}V${to}L${right} ${from}V0"/>`;
}

function dimensions(props: RailViewProps, text: number, say: (m: number) => string): VNode {
  const { length_m, height_m, bore_m, stations_m, port } = props;
  const [length, height] = [length_m * 1000, height_m * 1000];
  const onTop = typeof port?.at_m === "number" ? [port.at_m] : [];
  return fast`${running([...stations_m, length_m], height, height + 3 * text, text, say)}
    ${onTop.length > 0 && running(onTop, 0, -3 * text, text, say)}
    ${across(length, length + 2.5 * text, 0, height, text, say(height_m))}
    ${
    across(
      0,
      -2.5 * text,
      (height_m - bore_m) * 500,
      (height_m + bore_m) * 500,
      text,
      `Ø${say(bore_m)}`,
    )
  }`;
}

/** Running dimensions: one line from the datum, a head and a figure at each place. */
function running(
  places_m: readonly number[],
  face: number,
  y: number,
  text: number,
  say: (m: number) => string,
): VNode {
  const away = y > face ? 1 : -1;
  const sorted = [...places_m].sort((a, b) => a - b);
  const last = (sorted.at(-1) ?? 0) * 1000;
  let free = -Infinity;
  return fast`${line("thin", 0, face + away * text / 3, 0, y + away * text / 2)}
    ${line("thin", 0, y, last, y)}<circle class="datum" cx="0" cy="${round(y)}" r="${
    round(text / 4)
  }"/>
    ${
    sorted.map((place_m) => {
      const x = place_m * 1000;
      // Figures of near neighbours are moved apart.
      const at = Math.max(x, free);
      free = at + 1.1 * text;
      const end = y + away * text * 0.6;
      return [
        line("thin", x, face + away * text * 1.2, x, y),
        at === x ? null : line("thin", x, y, at, end),
        head(x, y, -1, 0, text),
        upright(at + text * 0.35, end, away > 0 ? "end" : "start", say(place_m)),
      ];
    })
  }`;
}

/** A dimension across the bar, its figure beyond the upper head where it finds room. */
function across(
  from: number,
  x: number,
  top: number,
  bottom: number,
  text: number,
  said: string,
): VNode {
  const away = Math.sign(x - from) * text;
  const above = Math.min(top, 0) - text * 0.8;
  return fast`${[top, bottom].map((y) => line("thin", from + away / 3, y, x + away / 2, y))}${
    line("thin", x, above, x, bottom)
  }
    ${head(x, top, 0, 1, text)}${head(x, bottom, 0, -1, text)}
    ${upright(x - text * 0.3, above + text * 0.6, "start", said)}`;
}

function line(name: string, x1: number, y1: number, x2: number, y2: number): VNode {
  return fast`<line class="${name}" x1="${round(x1)}" y1="${round(y1)}" x2="${round(x2)}" y2="${
    round(y2)
  }"/>`;
}

/** An arrow head with its point at a place; the shaft leaves in the direction given. */
function head(x: number, y: number, dx: number, dy: number, text: number): VNode {
  const [long, half] = [text * 0.7, text * 0.14];
  const points = [[0, 0], [long, half], [long, -half]].map(([along = 0, aside = 0]) =>
    `${round(x + dx * along + dy * aside)} ${round(y + dy * along + dx * aside)}`
  );
  return fast`<path class="head" d="M${points.join("L")}Z"/>`;
}

/** Text that is read from the right-hand side of the sheet. */
function upright(x: number, y: number, anchor: "start" | "end", said: string): VNode {
  return fast`<text x="${round(x)}" y="${round(y)}" text-anchor="${anchor}" transform="rotate(-90 ${
    round(x)
  } ${round(y)})">${said}</text>`;
}
