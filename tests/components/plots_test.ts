import { assert, assertEquals, assertStringIncludes, assertThrows } from "@std/assert";
import fc from "fast-check";
import { CeilingsChart } from "@/components/ceilings_chart.ts";
import { figureIn } from "@/components/figure_in.ts";
import { OperatingTable } from "@/components/operating_table.ts";
import { piecesAlong } from "@/components/pieces_along.ts";
import { axisOf } from "@/components/plot_axis.ts";
import { PressureProfile } from "@/components/pressure_profile.ts";
import { PumpChart, type PumpChartProps } from "@/components/pump_chart.ts";
import { scaleBetween } from "@/components/scale.ts";
import { spreadOut } from "@/components/spread_out.ts";
import { VerdictMatrix } from "@/components/verdict_matrix.ts";
import { profile, pump } from "./examples/plots.ts";
import { attribute, rendered, tags, textOf } from "./render.ts";
import { assertClose } from "../helpers/assert_close.ts";

Deno.test("spreadOut() keeps marks apart, in order, within the width and at their mean", () => {
  assertEquals(spreadOut([], 0.1), []);
  // Worked by hand: three wanted at 0.5 stand a pitch apart around it.
  const three = spreadOut([0.5, 0.5, 0.5], 0.1);
  [0.4, 0.5, 0.6].forEach((each, i) => assertClose(three[i] ?? NaN, each, 1e-9));
  fc.assert(
    fc.property(fc.array(fc.double({ min: 0, max: 1, noNaN: true }), { maxLength: 10 }), (any) => {
      const stands = spreadOut(any.toSorted((a, b) => a - b), 0.1);
      assertEquals(stands.length, any.length);
      stands.forEach((each, i) => {
        assert(each > -1e-9 && each < 1 + 1e-9, `${each}`);
        assert(i === 0 || each - (stands[i - 1] ?? 0) > 0.1 - 1e-9);
      });
    }),
    { seed: 3 },
  );
});

Deno.test("scaleBetween() has round ends outside both values, and a length where they are one", () => {
  const scale = scaleBetween(-0.31, 5.03, 5);
  assertEquals([scale.ticks.at(0), scale.ticks.at(-1)], [-1, 6]);
  assertClose(scale.at(2.5), 0.5, 1e-9);
  assertEquals(scaleBetween(0, 0, 5).at(1), 1);
});

Deno.test("axisOf() holds zero and writes all numbers with the same decimals", () => {
  const unit = { scale: 1e5, symbol: "bar" };
  const axis = axisOf({ title: "P", unit, values: [-9e3, -21e3], marks: 5 });
  assertEquals(axis.title, "P [bar]");
  assertEquals(axis.ticks.map(({ text }) => text), [
    "−0.25",
    "−0.20",
    "−0.15",
    "−0.10",
    "−0.05",
    "0",
  ]);
  assertEquals(axis.at(0), 1);
});

Deno.test("piecesAlong() names pump and regulator by their steps, and its losses add up", () => {
  const pieces = piecesAlong(profile.stretches);
  assertEquals(pieces.filter(({ isJump }) => isJump).map(({ name }) => name), [
    "Pump",
    "Regulator",
  ]);
  // The first pressure less the last: 1.6 kPa and 0.
  assertClose(pieces.reduce((sum, { lost_Pa }) => sum + lost_Pa, 0), 1.6e3, 1e-9);
  const bare = profile.stretches.map(({ name, points }) => ({
    name,
    points: points.map(({ at_m, pressure_Pa }) => ({ at_m, pressure_Pa })),
  }));
  assertEquals(piecesAlong(bare).map(({ name }) => name), [
    "Suction",
    "Pump",
    "Feed",
    "Rail",
    "Regulator",
    "Return",
  ]);
});

Deno.test("piecesAlong() leaves no loss out behind the last piece with a name", () => {
  const points = [
    { at_m: 0, pressure_Pa: 10 },
    { at_m: 1, pressure_Pa: 7, label: "Filter" },
    { at_m: 2, pressure_Pa: 5 },
  ];
  assertEquals(
    piecesAlong([{ name: "Feed", points }]).map(({ name, lost_Pa }) => [name, lost_Pa]),
    [["Filter", 3], ["Feed, the rest", 2]],
  );
});

Deno.test("PressureProfile says what loses most, and how near the fuel is to boiling", () => {
  const text = textOf(rendered(PressureProfile(profile)));
  assertStringIncludes(text, "Most is lost in 5 (Check valve): 0.150 bar.");
  // -3.9 kPa at the pump, boiling at -31 kPa: 27.1 kPa between.
  assertStringIncludes(text, "stays 0.271 bar above boiling, least after 3 (Elbow 90°)");
  assertStringIncludes(text, "4. Pump 0.55 5.030 adds 5.069");
  const boiling = textOf(rendered(PressureProfile({ ...profile, vapour_Pa: -1e3 })));
  assertStringIncludes(boiling, "its pressure is 0.029 bar too low");
});

Deno.test("PressureProfile's balloons have the numbers of its table", () => {
  const html = rendered(PressureProfile(profile));
  const [first = ""] = html.split("</figure>")[0]?.split("<details") ?? [];
  const whole = first.split('class="note"')[0] ?? "";
  const balloons = [...whole.matchAll(/class="balloon"[^]*?<text[^>]*>(\d+)</g)]
    .map(([, number]) => Number(number));
  const rows = [...html.matchAll(/<th scope="row">(\d+)\. /g)].map(([, number]) => Number(number));
  assertEquals(balloons.toSorted((a, b) => a - b), rows);
  assertEquals(rows.length, piecesAlong(profile.stretches).length);
});

Deno.test("PressureProfile draws a flat suction again, enlarged, and no other", () => {
  const count = (html: string): number =>
    tags(html, "svg").filter((tag) => attribute(tag, "role") === "img").length;
  assertEquals(count(rendered(PressureProfile(profile))), 2);
  const deep = { ...profile, vapour_Pa: -4e5 };
  assertEquals(count(rendered(PressureProfile(deep))), 1);
});

Deno.test("PumpChart marks working points at their flow and pressure", () => {
  const html = rendered(PumpChart({ ...pump, working: pump.working.slice(0, 1) }));
  const dot = tags(html, "circle").find((tag) => attribute(tag, "r") === "3.5");
  // 266 of 350 L/h; 3.48 of 10 bar in 200 pixels above the foot at 258.
  assertEquals(attribute(dot, "cx"), "76.00%");
  assertEquals(attribute(dot, "cy"), "188.4");
  assertStringIncludes(textOf(html), "Idle: 266 L/h at 3.48 bar");
});

Deno.test("PumpChart tells curves apart by dash, and names each in a key by what they differ in", () => {
  const key = (props: PumpChartProps): [dash: string | undefined, name: string][] => {
    const html = rendered(PumpChart(props));
    const list = html.slice(html.indexOf(`<ul class="plot-key">`), html.indexOf("</ul>"));
    return list.split("<li>").slice(1).map((each) => [
      attribute(tags(each, "path")[0], "stroke-dasharray"),
      textOf(each),
    ]);
  };
  const three = key(pump);
  assertEquals(three.map(([, name]) => name), [
    "13.5 V",
    "12.0 V",
    "9.50 V",
    "What the system asks for at full power",
  ]);
  const drawn = tags(rendered(PumpChart(pump)), "path")
    .map((tag) => attribute(tag, "stroke-dasharray"));
  assertEquals(drawn.slice(0, 4), three.map(([dash]) => dash));
  assertEquals(new Set(drawn.slice(0, 3)).size, 3);
  assertEquals(key({ ...pump, curves: pump.curves.slice(0, 1) })[0]?.[1], "Pump, 13.5 V");
});

Deno.test("PumpChart shows no flow back through a pump: its curve begins at no flow", () => {
  const points = [{ flow_m3_s: -1e-5, pressure_Pa: 9e5 }, { flow_m3_s: 3e-5, pressure_Pa: 1e5 }];
  const text = textOf(rendered(PumpChart({ ...pump, curves: [{ name: "Cranking", points }] })));
  // A quarter of the way down from 9 to 1 bar.
  assertStringIncludes(text, "Cranking 0 L/h 7.00 bar 108 L/h 1.00 bar");
});

Deno.test("figureIn() leaves the whole unit out, spaces and all", () => {
  assertEquals(figureIn(1e-6, "pumpFlow", "US gal/h"), "0.95");
  assertEquals(figureIn(-31e3, "pressure", "bar", 3), "−0.310");
});

Deno.test("OperatingTable leaves out columns that nothing fills, and makes up no number", () => {
  const rows = [{ name: "Idle", burnt_m3_s: 1e-5, says: "" }];
  const few = textOf(rendered(OperatingTable({ system: "metric", rows })));
  assertEquals(few.endsWith("Operating point Burnt, L/h Idle 36.0"), true, few);
  const more = [...rows, { name: "Peak", burnt_m3_s: 5e-5, rail_Pa: 4e5, says: "fails" }];
  const text = textOf(rendered(OperatingTable({ system: "metric", rows: more })));
  assertStringIncludes(text, "Idle 36.0 not known none Peak 180 4.00 fails");
});

Deno.test("VerdictMatrix names the worst case, and refuses a row that does not fit", () => {
  const row = (...verdicts: ("meets" | "marginal" | "fails" | "open")[]) => ({
    title: "Duty",
    cells: verdicts.map((verdict) => ({ verdict })),
  });
  const said = (...verdicts: Parameters<typeof row>) =>
    textOf(rendered(VerdictMatrix({ columns: ["E0", "E51", "E85"], rows: [row(...verdicts)] })));
  assertStringIncludes(said("meets", "fails", "fails"), "Fails at E51, E85");
  assertStringIncludes(said("meets", "open", "marginal"), "Open at E51");
  assertStringIncludes(said("meets", "meets", "meets"), "Meets in all");
  assertThrows(() => said("meets"), RangeError, "Duty: 1 cells for 3 columns");
});

Deno.test("CeilingsChart names the first to give out only when every ceiling is known", () => {
  const part = (title: string, power_W?: number, dependsOnPower = true) => ({
    id: title,
    title,
    dependsOnPower,
    power_W,
    because: "so",
  });
  const ceilings = [part("Pump", 2e5), part("Filter", 1e5), part("Sensor", undefined, false)];
  const said = (more: ReturnType<typeof part>[]) =>
    textOf(rendered(
      CeilingsChart({ ceilings: [...ceilings, ...more], target_W: 1.5e5, system: "metric" }),
    ));
  assertStringIncludes(
    said([]),
    "the first part to give out is the filter, at 100 kW, short of the target of 150 kW. " +
      "What does not depend on power: sensor",
  );
  const unknown = said([part("Suction")]);
  assert(!unknown.includes("first part"), unknown);
  assertStringIncludes(unknown, "not known: suction. What does not depend on power: sensor");
});
