/** The hole table, and what is left around the holes. */
import type { VNode } from "preact";
import { holeListing } from "@/lib/drawing/mod.ts";
import { FACES, galleryRange, openingRows } from "@/lib/evaluation/mod.ts";
import { drawingOptions, usualPaper } from "./drawing_of.ts";
import { HoleTable } from "./hole_table.ts";
import { html } from "./html.ts";
import { type NumberRow, NumberTable } from "./number_table.ts";
import type { PlanShown } from "./plan_shown.ts";
import { quantityRow } from "./size_numbers.ts";

/** All holes from the datums, then bar and gallery in numbers. */
export function DrillHoles(shown: PlanShown): VNode | undefined {
  const { evaluation, values, system } = shown;
  const { layout, holes } = evaluation.results.drill;
  if (layout === undefined) return undefined;
  const listing = holeListing(layout, drawingOptions(shown, usualPaper(shown)));
  const unit = system === "inch" ? "in" : "mm";
  const rails = values.rail.count > 1 ? `, for each of ${values.rail.count} rails` : "";
  return html`
    <section aria-labelledby="holes">
      <h2 id="holes">Holes${rails}</h2>
      ${HoleTable({
        caption: `Places and sizes in ${unit}; ${listing.note}`,
        columns: [
          { title: "Hole" },
          { title: "From face" },
          { title: "x", isNumber: true },
          { title: "y", isNumber: true },
          { title: "z", isNumber: true },
          { title: "Size and depth from its face" },
        ],
        rows: listing.holes.map(({ number, title, face, place, size }) => [
          `${number} ${title}`,
          face,
          ...place,
          size,
        ]),
      })}
      ${values.rail.count > 1 && html`
        <p class="note"><b>One sensor needs one port: drill it in one rail only.</b></p>
      `}
      ${holes && around(shown)} ${openings(shown)} ${NumberTable({
        caption: "Bar and gallery",
        rows: barRows(shown),
      })}
    </section>
  `;
}

function around(shown: PlanShown): VNode {
  const { evaluation } = shown;
  const long = lengthIn(shown);
  return html`
    <details>
      <summary>What is left around each hole, the gallery's drill having wandered</summary>
      ${HoleTable({
        caption: "Metal left at its thinnest",
        columns: [
          { title: "Hole" },
          { title: "To the outside", isNumber: true },
          { title: "Towards" },
          { title: "To the next hole", isNumber: true },
          { title: "Which" },
        ],
        rows: (evaluation.results.drill.holes ?? []).map((hole) => [
          hole.title,
          long(hole.wall_m),
          FACES[hole.face],
          hole.gap_m === undefined ? "far" : long(hole.gap_m),
          hole.nearest ?? "",
        ]),
      })}
    </details>
  `;
}

/** Where each hole breaks through, for setting the depth stop. */
function openings(shown: PlanShown): VNode | undefined {
  const rows = openingRows(shown.evaluation, shown.values);
  if (rows.length === 0) return undefined;
  const long = lengthIn(shown);
  const orNone = (length_m: number | undefined): string =>
    length_m === undefined ? "never" : long(length_m);
  return html`
    <details>
      <summary>Where each hole breaks through into the gallery</summary>
      ${HoleTable({
        caption: "Depths from the face; at worst with the gallery's drill having wandered",
        columns: [
          { title: "Hole" },
          { title: "First opens", isNumber: true },
          { title: "at worst", isNumber: true },
          { title: "Open all round", isNumber: true },
          { title: "at worst", isNumber: true },
          { title: "Metal above the gallery", isNumber: true },
        ],
        rows: rows.map(({ title, drawn, worst }) => [
          title,
          orNone(drawn.first_m),
          orNone(worst.first_m),
          orNone(drawn.last_m),
          orNone(worst.last_m),
          worst.above_m === undefined ? "–" : long(worst.above_m),
        ]),
      })}
    </details>
  `;
}

/** A length as the tables of this sheet write it; what is no metal is no number. */
function lengthIn(shown: PlanShown): (length_m: number) => string {
  return (length_m) =>
    length_m <= 0 ? "none" : quantityRow(shown, "", length_m, "length")[0]?.value ?? "";
}

function barRows(shown: PlanShown): NumberRow[] {
  const { evaluation, values } = shown;
  const { bar } = evaluation.results;
  const row = quantityRow.bind(undefined, shown);
  const range = galleryRange(evaluation, values);
  return [
    ...row(
      "Biggest gallery that keeps all aims",
      range?.biggest_m,
      "length",
      range?.heldBy &&
        `held by ${range.heldBy.charAt(0).toLowerCase()}${range.heldBy.slice(1)}`,
    ),
    ...row(
      "Smallest that takes every drill",
      range?.least_m,
      "length",
      range?.askedBy &&
        `asked by ${range.askedBy.charAt(0).toLowerCase()}${range.askedBy.slice(1)}`,
    ),
    ...row("Wall around the gallery as drawn", bar?.wallNominal_m, "length"),
    ...row(
      "Drill drift allowed for",
      bar?.drift_m,
      "length",
      values.rail.drift === undefined
        ? `by its length: ${lengthIn(shown)(0.001)} in ${lengthIn(shown)(0.3)}, ours`
        : "as you measured it",
    ),
    ...(bar && bar.wallLeft_m <= 0
      ? [{ label: "Least wall left", value: "none", note: "the drill may break out" }]
      : row("Least wall left", bar?.wallLeft_m, "length")),
    ...row("Wall that proof pressure alone takes", bar?.strengthWall_m, "length", "15 % spared"),
    ...row(
      "Hoop stress at proof pressure",
      bar?.hoop_Pa,
      "pressure",
      "thick wall, least all round",
    ),
    ...row("Peak stress at working pressure", bar?.peakWorking_Pa, "pressure", "at a cross hole"),
    ...row("Peak stress at proof pressure", bar?.peak_Pa, "pressure", "at a cross hole"),
    ...row("Lift at each pocket at proof pressure", bar?.liftPerInjector_N, "force"),
  ];
}
