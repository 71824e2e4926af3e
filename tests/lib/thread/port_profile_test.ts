/** Profiles of ports: every port, with whatever is said of it. */
import { assert, assertAlmostEquals, assertEquals, assertThrows } from "@std/assert";
import fc from "fast-check";
import { Working } from "@/lib/method/mod.ts";
import {
  PORT_SHAPES,
  type PortId,
  type PortProfile,
  portProfile,
  type PortProfileOptions,
  PORTS,
  type PortShapeId,
  type SensorPort,
  sensorPort,
  threadOf,
} from "@/lib/thread/mod.ts";
import { DEGREE, MM } from "./shorthand.ts";

const IDS = Object.keys(PORT_SHAPES) as PortShapeId[];

/** Diameter of a profile at a depth [m]. */
function widthAt({ segments }: PortProfile, z: number): number {
  const found = segments.find(({ from_m, to_m }) => z >= from_m && z < to_m);
  assert(found, `nothing at ${z}`);
  const { from_m, to_m, fromDiameter_m, toDiameter_m } = found;
  return fromDiameter_m + (toDiameter_m - fromDiameter_m) * (z - from_m) / (to_m - from_m);
}

const maybe = (min: number, max: number) =>
  fc.option(fc.double({ min, max, noNaN: true }), { nil: undefined });

/** Options with those left out that came to nothing. */
const options: fc.Arbitrary<PortProfileOptions> = fc.record({
  spotted_m: maybe(0, 0.003),
  threadTo_m: maybe(0.004, 0.03),
  seatDepth_m: maybe(-0.005, 0.02),
  pilot_m: maybe(0.001, 0.0055),
  through_m: maybe(0.001, 0.05),
}).map((all) => Object.fromEntries(Object.entries(all).filter(([, value]) => value !== undefined)));

Deno.test("stretches follow one another, and the thread lies in the port", () => {
  fc.assert(
    fc.property(fc.constantFrom(...IDS), options, (id, given) => {
      const { segments, thread } = portProfile(id, given);
      let z = 0;
      for (const { from_m, to_m, fromDiameter_m, toDiameter_m } of segments) {
        assertAlmostEquals(from_m, z, 1e-12);
        assert(to_m > from_m && fromDiameter_m > 0 && toDiameter_m >= 0);
        z = to_m;
      }
      const { through_m } = given;
      if (through_m !== undefined) assertAlmostEquals(z, through_m, 1e-8);
      else assertAlmostEquals(segments.at(-1)?.toDiameter_m ?? NaN, 0, 1e-12);
      if (thread === undefined) return;
      assert(thread.from_m >= 0 && thread.to_m > thread.from_m && thread.to_m <= z + 1e-12);
    }),
    { seed: 4, numRuns: 1000 },
  );
});

Deno.test("only the mouth of a port is wider than its thread", () => {
  for (const id of IDS) {
    const { nominal_m } = PORT_SHAPES[id];
    for (const { cut, what, fromDiameter_m } of portProfile(id, { spotted_m: 0.001 }).segments) {
      const isMouth = cut === "spotface" || what === "cone for the O-ring";
      assertEquals(fromDiameter_m > nominal_m, isMouth, `${id}: ${what}`);
    }
  }
});

Deno.test("the O-ring's cone ends no narrower than its thread", () => {
  for (const id of IDS) {
    const { mouth, thread } = PORT_SHAPES[id];
    if (mouth === undefined) continue;
    const cone = portProfile(id).segments[0];
    assert(cone);
    assert(cone.toDiameter_m > threadOf(thread).nominal_m, id);
    const angle = Math.atan((cone.fromDiameter_m - cone.toDiameter_m) / 2 / cone.to_m);
    assertAlmostEquals(angle, mouth.fromAxis_rad, 1e-9, id);
  }
});

Deno.test("a 7/16-20 port, spotted by 0.5 mm, blind: depths and diameters by hand", () => {
  const { segments, thread } = portProfile("7/16-20-oring", { spotted_m: 0.5 * MM });
  const rows = segments.map(({ cut, from_m, to_m, fromDiameter_m, toDiameter_m }) => [
    cut,
    ...[from_m, to_m, fromDiameter_m, toDiameter_m].map((m) => Math.round(m / MM * 100) / 100),
  ]);
  // Cone 12.4 - 2 x 2.4 tan 12; drill 25/64 in; point 0.3004 x 9.92.
  assertEquals(rows, [
    ["spotface", 0, 0.5, 21, 21],
    ["seat", 0.5, 2.9, 12.4, 11.38],
    ["thread", 2.9, 12, 9.92, 9.92],
    ["bore", 12, 14.5, 9.92, 9.92],
    ["tip", 14.5, 17.48, 9.92, 0],
  ]);
  assertAlmostEquals((thread?.from_m ?? NaN) / MM, 2.9, 1e-9);
  assertAlmostEquals((thread?.to_m ?? NaN) / MM, 12, 1e-9);
});

Deno.test("with a pilot the tapping drill's point ends in it, without it goes through", () => {
  const piloted = portProfile("G1/4-face", { pilot_m: 0.006, through_m: 0.03 });
  assertEquals(piloted.segments.map(({ cut }) => cut), ["thread", "bore", "tip", "pilot"]);
  const tip = piloted.segments[2];
  assert(tip);
  assertAlmostEquals(tip.toDiameter_m, 0.006, 1e-12);
  const slope = (tip.fromDiameter_m - tip.toDiameter_m) / 2 / (tip.to_m - tip.from_m);
  assertAlmostEquals(Math.atan(slope) / DEGREE, 59, 1e-9);
  const through = portProfile("G1/4-face", { through_m: 0.03 });
  assertEquals(through.segments.map(({ cut }) => cut), ["thread", "bore"]);
  assertAlmostEquals(through.segments.at(-1)?.to_m ?? NaN, 0.03, 1e-12);
});

Deno.test("a taper thread narrows by 1 in 16 down to its drill", () => {
  for (const id of ["1/8-NPT", "1/4-NPT", "3/8-NPT"] as const) {
    const { taperFace_m = NaN, drill_m, fullThread_m } = PORT_SHAPES[id];
    const profile = portProfile(id);
    for (let share = 0.01; share < 1; share += 0.02) {
      const z = share * fullThread_m;
      assertAlmostEquals(widthAt(profile, z), Math.max(drill_m, taperFace_m - z / 16), 1e-9, id);
    }
    // Below full thread there is a drilled hole.
    assertAlmostEquals(widthAt(profile, fullThread_m + 1e-6), drill_m, 1e-9, id);
  }
});

Deno.test("profiles of sensor ports have the depths of the port's stack", () => {
  const bar = {
    torque_Nm: 18,
    shearStrength_Pa: 156e6,
    faceToAxis_m: 0.024,
    galleryBore_m: 0.0127,
    faceWidth_m: 0.03,
  };
  for (const id of Object.keys(PORTS) as PortId[]) {
    const port: SensorPort = sensorPort(new Working(), { ...bar, port: id });
    const cone = PORTS[id].seal === "cone";
    const { segments, thread } = portProfile(id, {
      drill_m: port.drill_m,
      ...cone
        ? { seatDepth_m: port.seatDepth_m, ...port.pilot_m && { pilot_m: port.pilot_m } }
        : { threadTo_m: port.firstOpening_m },
      through_m: bar.faceToAxis_m,
    });
    const full = port.stack.find(({ what }) => what === "full thread");
    assert(full && thread, id);
    assertAlmostEquals(thread.from_m, full.from_m, 1e-12, id);
    assertAlmostEquals(thread.to_m, full.to_m, 1e-12, id);
    assertAlmostEquals(thread.to_m - thread.from_m, port.fullThreadAvailable_m, 1e-12, id);
    const seat = segments.find(({ what }) => what === "45 degree seat");
    assertEquals(seat !== undefined, cone, id);
    if (seat === undefined) continue;
    const layer = port.stack.find(({ what }) => what === "45 degree seat");
    assertAlmostEquals(seat.from_m, layer?.from_m ?? NaN, 1e-12);
    assertAlmostEquals(seat.to_m, layer?.to_m ?? NaN, 1e-12);
  }
});

Deno.test("what can't be is refused by the name of its field", () => {
  const refused: [PortProfileOptions, string][] = [
    [{ pilot_m: 0.009 }, "pilot_m"],
    [{ drill_m: 0.003, pilot_m: 0.004 }, "pilot_m"],
    [{ through_m: 0 }, "through_m"],
    [{ threadTo_m: NaN }, "threadTo_m"],
    [{ spotted_m: -0.001 }, "spotted_m"],
  ];
  for (const [given, field] of refused) {
    assertThrows(() => portProfile("M10x1-cone", given), RangeError, field);
  }
});
