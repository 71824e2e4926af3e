/** Threads of the rail: the sensor's port, plugs and other ports, and which drills serve them. */
import type { VNode } from "preact";
import type { PlugResults } from "@/lib/evaluation/mod.ts";
import {
  type DrillChoice,
  drillChoices,
  FLARE_SIZES,
  type FlareDash,
  HEIGHT_BASES,
  NPT_THREADS,
  PORT_SHAPES,
  type PortShapeId,
  wrongFlareScrewsOn,
} from "@/lib/thread/mod.ts";
import { formatIn, formatQuantity } from "@/lib/units/mod.ts";
import { HoleTable } from "./hole_table.ts";
import { html } from "./html.ts";
import type { PlanShown } from "./plan_shown.ts";

/** Plugs and ports besides the sensor's, then the drills for every thread of the rail. */
export function DrillPorts(shown: PlanShown): VNode {
  const { evaluation, values } = shown;
  const { plugs } = evaluation.results.drill;
  const threads = new Set<PortShapeId>([values.sensor.port, ...plugs.map(({ id }) => id)]);
  return html`
    <section aria-labelledby="threads">
      <h2 id="threads">Plugs, ports and their drills</h2>
      ${plugs.length > 0 && HoleTable({
        caption: "Depths from the face",
        columns: [
          { title: "What" },
          { title: "Thread" },
          { title: "Full thread to", isNumber: true },
          { title: "asked", isNumber: true },
          { title: "Drill to", isNumber: true },
          { title: "Spot the face", isNumber: true },
          { title: "Opens the gallery" },
        ],
        rows: plugs.map((plug) => plugRow(shown, plug)),
      })}
      ${[...threads].map((id) => drills(shown, id))}
      ${adapters([...threads]).map((text) => html`<p class="note">${text}</p>`)}
    </section>
  `;
}

function plugRow(shown: PlanShown, { hole, title, id, depth_m, asked_m }: PlugResults): string[] {
  const long = longIn(shown);
  const shape = PORT_SHAPES[id];
  const laid = shown.evaluation.results.drill.layout?.holes.find((one) => one.id === hole);
  const drilled = laid?.profile.filter(({ cut }) => cut !== "tip").at(-1)?.to_m;
  const isEnd = hole.startsWith("plug-");
  return [
    title,
    shape.title,
    depth_m > 0 ? long(depth_m) : "none",
    long(asked_m),
    drilled === undefined ? "–" : long(drilled),
    shape.flat_m === undefined ? "no" : `Ø ${long(shape.flat_m)}`,
    isEnd ? "along it" : "with its own drill",
  ];
}

function longIn({ system }: PlanShown): (length_m: number) => string {
  return (length_m) => formatIn(length_m, "length", system === "inch" ? "in" : "mm");
}

const SET_WORDS: Readonly<Record<DrillChoice["set"], string>> = {
  listed: "the standard's list",
  metric: "metric",
  fractional: "fractional",
  number: "number",
  letter: "letter",
};

/** A drill further off than this is no stand-in [m]. */
const NEAR_m = 0.0003;

function drills(shown: PlanShown, id: PortShapeId): VNode {
  const { thread, seal, title } = PORT_SHAPES[id];
  if (seal === "taper") return taperDrills(shown, id);
  const long = longIn(shown);
  const share = (value: number): string => formatQuantity(value, "ratio", shown.system);
  return html`
    <details>
      <summary>Drills for ${title}</summary>
      ${HoleTable({
        caption: `Thread height ISO: ${HEIGHT_BASES.iso}; US: ${HEIGHT_BASES.us}`,
        columns: [
          { title: "Drill" },
          { title: "From" },
          { title: "Diameter", isNumber: true },
          { title: "Off the list", isNumber: true },
          { title: "Height ISO", isNumber: true },
          { title: "Height US", isNumber: true },
          { title: "Hole's limits" },
        ],
        rows: drillChoices(thread)
          .filter(({ error_m }) => Math.abs(error_m) <= NEAR_m)
          .map(({ name, set, diameter_m, error_m, heightIso, heightUs, inside }) => [
            name,
            SET_WORDS[set],
            long(diameter_m),
            error_m === 0 ? "same" : `${error_m < 0 ? "−" : "+"}${long(Math.abs(error_m))}`,
            share(heightIso),
            share(heightUs),
            inside ? "inside" : "outside",
          ]),
      })}
    </details>
  `;
}

/** A taper thread is drilled straight for its size, or drilled smaller and reamed. */
function taperDrills(shown: PlanShown, id: PortShapeId): VNode {
  const size = id.replace("-NPT", "") as keyof typeof NPT_THREADS;
  const { straightDrills, reamedDrill } = NPT_THREADS[size];
  const long = longIn(shown);
  const names = straightDrills.map(({ name, diameter_m }) => `${name} (${long(diameter_m)})`);
  return html`
    <details>
      <summary>Drills for ${PORT_SHAPES[id].title}</summary>
      <p>
        Straight, published in two conventions: ${names.join(" or ")}; or ${reamedDrill
          .name}${" "}(${long(
            reamedDrill.diameter_m,
          )}) and a taper reamer. Sealant for fuel on the thread, the first turns bare.
      </p>
    </details>
  `;
}

/** Adapters to flared hose ends that have the thread of a port. */
function adapters(threads: readonly PortShapeId[]): string[] {
  const names = new Set(threads.map((id) => PORT_SHAPES[id].thread));
  const dashes = (Object.keys(FLARE_SIZES) as FlareDash[]).filter((dash) =>
    names.has(FLARE_SIZES[dash].thread)
  );
  return dashes.map((dash) => {
    const { thread } = FLARE_SIZES[dash];
    const wrong = wrongFlareScrewsOn(dash)
      ? " A 45 degree fitting screws onto it too and never seals: look at the cone."
      : "";
    return `${thread} takes an O-ring adapter to a ${dash} hose end with a 37 degree flare.${wrong}`;
  });
}
