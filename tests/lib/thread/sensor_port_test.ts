import { assert, assertAlmostEquals, assertEquals } from "@std/assert";
import fc from "fast-check";
import { Working } from "@/lib/method/mod.ts";
import {
  type PortId,
  PORTS,
  type SensorPort,
  sensorPort,
  type SensorPortSpec,
} from "@/lib/thread/mod.ts";

const BAR: SensorPortSpec = {
  port: "M10x1-cone",
  torque_Nm: 18,
  shearStrength_Pa: 207e6,
  faceToAxis_m: 0.0125,
  galleryBore_m: 0.0127,
  faceWidth_m: 0.025,
};
const SENSOR = { reach_m: 0.0105, nose_m: 0.007, pilot_m: 0.004 };
const IDS = Object.keys(PORTS) as PortId[];

const lay = (change: Partial<SensorPortSpec> = {}): SensorPort =>
  sensorPort(new Working(), { ...BAR, ...change });

const said = (port: SensorPort, words: string): boolean =>
  port.says.some((text) => text.includes(words));

Deno.test("ports: each is filed under its id, with a tapping drill inside its limits", () => {
  for (const [id, port] of Object.entries(PORTS)) {
    assertEquals(port.id, id);
    const { minorMin_m = 0, minorMax_m = 1, tappingDrill_m } = port;
    assert(tappingDrill_m > 0.004 && tappingDrill_m >= minorMin_m && tappingDrill_m <= minorMax_m);
  }
});

Deno.test("cone seat: the nose seals 0.5 mm before the shoulder bottoms, 10 mm below the face", () => {
  const port = lay({ ...SENSOR, faceToAxis_m: 0.022 });
  assertAlmostEquals(port.seatAt_m ?? 0, 0.010, 1e-9);
  assertAlmostEquals(port.shoulderGap_m ?? 0, 0.0005, 1e-9);
  // The circle of 7 mm is 1 mm into a 45 degree cone from 9 mm.
  assertAlmostEquals(port.seatDepth_m, 0.009, 1e-9);
  assertAlmostEquals(port.coneDepth_m ?? 0, 0.0025, 1e-9);
  assertAlmostEquals(port.seatRing_m ?? 0, 0.0025, 1e-9);
  // 22 - 6.35 - 9 - 2.5 mm.
  assertAlmostEquals(port.seatToGallery_m ?? 0, 0.00415, 1e-9);
  // A bottoming tap: two threads of lead and one pitch clear of the seat.
  assertAlmostEquals(port.fullThreadAvailable_m, 0.006, 1e-9);
  assertEquals(port.noseArrives, true);
});

Deno.test("cone seat: the stack runs from the face to the open gallery without a gap", () => {
  const { stack, lastOpening_m } = lay({ ...SENSOR, faceToAxis_m: 0.022 });
  assertEquals(stack.map(({ what }) => what), [
    "full thread",
    "tap lead and clearance, no full thread",
    "45 degree seat",
    "pilot",
    "opening into the gallery",
  ]);
  assertEquals(stack[0]?.from_m, 0);
  stack.slice(1).forEach(({ from_m }, i) => assertAlmostEquals(from_m, stack[i]?.to_m ?? 0, 1e-12));
  // The pilot, 4 mm, opens before the tapping drill's 9 mm would.
  assert((stack.at(-1)?.to_m ?? 1) < (lastOpening_m ?? 0));
});

Deno.test("cone seat without reach: as deep as leaves 2 mm above the gallery", () => {
  const port = lay({ nose_m: 0.007, faceToAxis_m: 0.022 });
  assertAlmostEquals(port.seatToGallery_m ?? 0, 0.002, 1e-9);
  assertEquals([port.shoulderGap_m, port.noseArrives], [undefined, undefined]);
  assert(said(port, "the sensor's reach must be at least"));
});

Deno.test("25 mm bar, central 12.7 mm gallery: 6.15 mm to the gallery, no room for a cone seat", () => {
  const port = lay(SENSOR);
  assertAlmostEquals(port.firstOpening_m, 0.00615, 1e-9);
  assertAlmostEquals(port.lastOpening_m ?? 0, 0.00801977, 1e-7);
  assert((port.seatToGallery_m ?? 1) < 0);
  for (const words of ["thicker", "offset", "bar's end", "boss"]) assert(said(port, words), words);
});

Deno.test("the advice is enough: a bar thicker by what it says has the metal aimed at", () => {
  const short = lay(SENSOR);
  const by_mm = Number(/It takes ([\d.]+) mm/.exec(short.says.join(" "))?.[1]);
  const port = lay({ ...SENSOR, faceToAxis_m: BAR.faceToAxis_m + by_mm / 1000 });
  assertAlmostEquals(port.seatToGallery_m ?? 0, 0.002, 1e-5);
  assert(!said(port, "thicker"));
});

Deno.test("advice on the face port's thread: deeper by what it says holds three times the pull", () => {
  const short = lay({ port: "G1/8-face" });
  const by_mm = Number(/It takes ([\d.]+) mm/.exec(short.says.join(" "))?.[1]);
  const port = lay({ port: "G1/8-face", faceToAxis_m: BAR.faceToAxis_m + by_mm / 1000 });
  assertAlmostEquals(port.strippingFactor ?? 0, 3, 0.003);
});

Deno.test("a long reach in a shallow bar: the shallower seat that is offered works", () => {
  const port = lay({ ...SENSOR, reach_m: 0.02, faceToAxis_m: 0.02 });
  const [, seat, proud, thread] =
    /Or begin the seat at ([\d.]+) mm.* ([\d.]+) mm proud and ([\d.]+) mm/
      .exec(port.says.join(" ")) ?? [];
  // Gallery at 13.65, 2 mm of metal and 2.5 mm of cone above it; sealing 1 mm further in.
  assertAlmostEquals(Number(seat), 9.15, 0.006);
  assertAlmostEquals(Number(proud), 20 - 10.15, 0.006);
  assertAlmostEquals(Number(thread), 6.15, 0.006);
});

Deno.test("pilot and nose that don't go together are told", () => {
  const wide = lay({ ...SENSOR, pilot_m: 0.0095 });
  assertEquals([wide.coneDepth_m, wide.seatToGallery_m, wide.noseArrives], [
    undefined,
    undefined,
    false,
  ]);
  assert((wide.seatRing_m ?? 1) < 0 && said(wide, "leaves no seat"));
  const small = lay({ ...SENSOR, nose_m: 0.0035 });
  assert(small.noseArrives === false && said(small, "falls into"));
  const fat = lay({ ...SENSOR, nose_m: 0.0095 });
  assert(fat.noseArrives === false && said(fat, "does not enter"));
  assert(said(lay({ ...SENSOR, pilot_m: 0.0075, nose_m: 0.008 }), "seat ring is 0.75 mm"));
});

Deno.test("a hole as wide as the gallery: no last opening, and it says so", () => {
  for (const galleryBore_m of [0.0105, 0.008]) {
    const port = lay({ port: "M12x1.5-face", galleryBore_m });
    assertEquals(port.lastOpening_m, undefined);
    assert(said(port, "never opens all round"));
  }
  assert(lay({ port: "M12x1.5-face", galleryBore_m: 0.0106 }).lastOpening_m !== undefined);
});

Deno.test("drill at hand: judged by the hole's limits, the nearest drills by the list's drill", () => {
  for (
    const [drill_m, inside] of [[0.0089, false], [0.009, true], [0.0091, true], [
      0.0092,
      false,
    ]] as const
  ) {
    const port = lay({ drill_m });
    assertEquals([port.drill_m, port.drillInside], [drill_m, inside]);
    assertEquals(said(port, "is outside"), !inside);
    assertEquals([port.nearest.metric.name, port.nearest.letter.name], ["9.0 mm", "T"]);
  }
});

Deno.test("taper port: no height, pull or factor; thread against its useful length", () => {
  const port = lay({ port: "1/8-NPT" });
  assertEquals(
    [port.heightIso, port.heightUs, port.preload_N, port.strippingFactor, port.drillInside],
    [undefined, undefined, undefined, undefined, undefined],
  );
  assertAlmostEquals((port.taperThread_m ?? 0) / 0.0254, 0.2639, 1e-4);
  assert(said(port, "useful length"));
  assert(!said(lay({ port: "1/8-NPT", faceToAxis_m: 0.014 }), "useful length"));
});

Deno.test("O-ring port: the cone at its mouth takes its length from the thread", () => {
  const port = lay({ port: "7/16-20-oring" });
  assertAlmostEquals(port.fullThreadAvailable_m, 0.00615 - 0.0024, 1e-9);
  assertEquals(port.stack[0]?.what, "cone for the O-ring");
  assert(said(lay({ port: "7/16-20-oring", faceWidth_m: 0.02 }), "flat of 21 mm"));
});

Deno.test("M10x1 in aluminium: twice the torque halves the factor, and the thread asked for holds 3", () => {
  const [once, twice] = [lay({ faceToAxis_m: 0.03 }), lay({ faceToAxis_m: 0.03, torque_Nm: 36 })];
  assertAlmostEquals(
    (once.strippingFactor ?? 0) / (twice.strippingFactor ?? 1),
    2,
    1e-9,
  );
  const perMetre = (once.strippingFactor ?? 0) / once.fullThreadAvailable_m;
  assertAlmostEquals(perMetre * (once.fullThreadForTorque_m ?? 0), 3, 1e-9);
});

Deno.test("the record explains every number by its key", () => {
  const working = new Working();
  const port = sensorPort(working, { ...BAR, ...SENSOR, faceToAxis_m: 0.022 });
  for (const [key, value] of Object.entries(port)) {
    if (typeof value !== "number" || ["drill_m", "pilot_m"].includes(key)) continue;
    const use = working.uses.find(({ result }) => result === `port.${key}`);
    assertEquals(use?.value, value, key);
  }
});

Deno.test("any bar and sensor that a plan can hold: no throw, no number that isn't one", () => {
  const mm = (min: number, max: number) =>
    fc.double({ min, max, noNaN: true }).map((n) => n / 1000);
  const maybe = (min: number, max: number) => fc.option(mm(min, max), { nil: undefined });
  fc.assert(fc.property(
    fc.constantFrom(...IDS),
    fc.record({
      drill_m: maybe(4, 20),
      pilot_m: maybe(1, 8),
      reach_m: maybe(3, 40),
      nose_m: maybe(2, 12),
    }),
    fc.record({
      torque_Nm: fc.double({ min: 0.5, max: 80, noNaN: true }),
      shearStrength_Pa: fc.double({ min: 4e7, max: 8e8, noNaN: true }),
      faceToAxis_m: mm(3, 60),
      galleryBore_m: mm(3, 40),
      faceWidth_m: mm(5, 100),
    }),
    (port, sensor, bar) => {
      const given = Object.fromEntries(Object.entries(sensor).filter(([, v]) => v !== undefined));
      const found = lay({ port, ...given, ...bar });
      for (const [key, value] of Object.entries(found)) {
        if (typeof value === "number") assert(Number.isFinite(value), key);
      }
      for (const { from_m, to_m } of found.stack) assert(to_m > from_m && Number.isFinite(to_m));
      assert(!/NaN|Infinity|undefined/.test(JSON.stringify([found.says, found.stack])));
    },
  ));
});

Deno.test("pull of the torque: 18 N m on an oiled M10 is 12 kN, a pilot not given is 4 mm", () => {
  const port = lay();
  assertAlmostEquals(port.preload_N ?? 0, 12_000, 1e-6);
  assertAlmostEquals(port.seatRing_m ?? 0, 0.0025, 1e-9);
});

Deno.test("a plug tap's lead of four threads that meets the far wall is told", () => {
  // First opening at 6 mm, four threads of 1.5 mm: a gallery of 6 mm is just enough.
  const gallery = (galleryBore_m: number): SensorPort =>
    lay({ port: "M12x1.5-face", galleryBore_m, faceToAxis_m: 0.006 + galleryBore_m / 2 });
  assertEquals(gallery(0.0061).tapLead_m, 0.006);
  assert(!said(gallery(0.0061), "bottoming tap"));
  assert(said(gallery(0.0059), "bottoming tap"));
});
