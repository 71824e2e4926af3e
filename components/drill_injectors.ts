/** How the injectors stand in the rail: rings, spacers, bosses, play. */
import type { VNode } from "preact";
import { INCH_RINGS, METRIC_RINGS, type Ring } from "@/lib/seal/mod.ts";
import { formatQuantity, type Kind } from "@/lib/units/mod.ts";
import { HoleTable } from "./hole_table.ts";
import { html } from "./html.ts";
import { type NumberRow, NumberTable } from "./number_table.ts";
import type { PlanShown } from "./plan_shown.ts";
import { quantityRow } from "./size_numbers.ts";

/** Seals, heights and places of the injectors. */
export function DrillInjectors(shown: PlanShown): VNode {
  return html`
    <section aria-labelledby="injectors">
      <h2 id="injectors">Injectors in their pockets</h2>
      ${seal(shown)} ${stack(shown)} ${bosses(shown)}
      <p class="note">
        Drill a trial pocket in an offcut first and push an oiled injector in: it shows lead-in, depth
        and squeeze before the bar is spent. Common practice, no source.
      </p>
    </section>
  `;
}

function say({ system }: PlanShown, value: number, kind: Kind): string {
  return formatQuantity(value, kind, system);
}

function seal(shown: PlanShown): VNode | undefined {
  const { seal: found, stack: stood } = shown.evaluation.results.drill;
  if (found === undefined) return undefined;
  const { bore, gland, leadMouth_m, leadLength_m } = found;
  const row = quantityRow.bind(undefined, shown);
  const { pockets } = shown.values;
  const { ringInside, ringSection } = pockets;
  const rows: NumberRow[] = [
    ...(ringInside === undefined || ringSection === undefined ? [] : [{
      label: "O-ring, inside by thickness",
      value: `${say(shown, ringInside, "length")} by ${say(shown, ringSection, "length")}`,
      note: ringName(ringInside, ringSection),
    }]),
    {
      label: "Finished bore",
      value: `${say(shown, bore.least_m, "length")} to ${say(shown, bore.most_m, "length")}`,
      note: `${pockets.tolerance} of ISO 286; leave what a flexible hone takes, some hundredths`,
    },
    ...row("Mouth of the lead-in", leadMouth_m, "length"),
    ...row("Length of the lead-in", leadLength_m, "length"),
    ...row("O-ring's middle below the face", stood?.ringDepth_m, "length"),
    ...(gland === undefined ? [] : [
      ...row("Squeeze as drawn", gland.squeezeNominal, "ratio"),
      {
        label: "Squeeze over the limits of size",
        value: `${say(shown, gland.squeezeLeast, "ratio")} to ${
          say(shown, gland.squeezeMost, "ratio")
        }`,
        note: "the injector lying to one side; below nought it would not touch",
      },
      ...row("Stretch on the groove", gland.stretch, "ratio"),
      {
        label: "Fill of the groove",
        value: `${say(shown, gland.fillNominal, "ratio")}, at most ${
          say(shown, gland.fillMost, "ratio")
        }`,
        note: "before fuel swells the ring",
      },
      ...row("Widest gap beside the ring", gland.gapMost_m, "length"),
    ]),
  ];
  return NumberTable({ caption: "Pocket and O-ring", rows });
}

/** How far a ring may be from a listed one to be called by its name [m]. */
const SAME_m = 3e-5;

/** The standard's name of a ring, where the tables have it. */
function ringName(inside_m: number, section_m: number): string {
  const isIt = ({ insideDiameter, section }: Ring): boolean =>
    Math.abs(insideDiameter.nominal_m - inside_m) <= SAME_m &&
    Math.abs(section.nominal_m - section_m) <= SAME_m;
  const inch = INCH_RINGS.find(isIt);
  if (inch !== undefined) return `size ${inch.name} of AS568 and ISO 3601-1`;
  return METRIC_RINGS.some(isIt)
    ? "a metric size of ISO 3601-1"
    : "in no table here: tolerances of ISO 3601-1 taken";
}

function stack(shown: PlanShown): VNode | undefined {
  const { stack: found } = shown.evaluation.results.drill;
  if (found === undefined) return undefined;
  const long = (value_m: number): string => say(shown, value_m, "length");
  const stand = found.standHeight_m === undefined
    ? "Measure the injectors, seat to the middle of the upper O-ring, and the height to stand the rail at is worked out here."
    : `Stand the rail's injector face ${
      long(found.standHeight_m)
    } above the lowest seat: then each ring has as much bore before it as behind it.`;
  return html`
    ${HoleTable({
      caption: "Heights: spacers bring all rings into one plane",
      columns: [
        { title: "Injector" },
        { title: "Spacer under it", isNumber: true },
        { title: "Ring past the lead-in", isNumber: true },
        { title: "at worst", isNumber: true },
        { title: "Bore beyond it at worst", isNumber: true },
        { title: "Room at worst", isNumber: true },
      ],
      rows: found.injectors.map(({ spacer_m, insertion, room }, i) => [
        `Injector ${i + 1}`,
        spacer_m <= 0 ? "none" : long(spacer_m),
        long(insertion.nominal_m),
        long(insertion.worst_m),
        long(found.below_m[i] ?? 0),
        long(room.worst_m),
      ]),
    })}
    <p class="note">${stand}</p>
  `;
}

function bosses(shown: PlanShown): VNode | undefined {
  const found = shown.evaluation.results.drill.float;
  if (found?.bosses === undefined) {
    return html`
      <p class="note">
        <a href=${`${shown.planPath}/size#stations.readings`}>Enter the readings of the manifold's
        bosses</a>, all from one datum: between holes measured one from another the errors add up.
      </p>
    `;
  }
  const long = (value_m: number): string => say(shown, value_m, "length");
  const { bosses: measured, apart_m, float } = found;
  const pitch = measured.pitch_m === undefined
    ? ""
    : ` The pitch that fits them best is ${long(measured.pitch_m)}.`;
  const play = float === undefined
    ? ""
    : ` Play between pocket and boss ${long(float.play_m)}; an injector may lean ${
      say(shown, float.tilt_rad, "angle")
    } with both in line.`;
  return html`
    ${HoleTable({
      caption: "The manifold's bosses as measured, against the pockets",
      columns: [
        { title: "Boss" },
        { title: "Centre from its datum", isNumber: true },
        { title: "Bore", isNumber: true },
        { title: "Off an equal pitch", isNumber: true },
        { title: "Pocket is off by", isNumber: true },
        { title: "Play left", isNumber: true },
      ],
      rows: measured.bosses.map(({ centre_m, bore_m, residual_m }, i) => [
        `Boss ${i + 1}`,
        long(centre_m),
        bore_m === undefined ? "by pin" : long(bore_m),
        long(residual_m),
        long(apart_m[i] ?? 0),
        float === undefined ? "open" : long(float.left_m[i] ?? 0),
      ]),
    })}
    <p class="note">The rail is shifted along to where it fits best.${pitch}${play}</p>
  `;
}
