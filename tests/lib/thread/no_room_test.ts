import { assert, assertEquals } from "@std/assert";
import { Working } from "@/lib/method/mod.ts";
import { type PortId, PORTS, sensorPort } from "@/lib/thread/mod.ts";

const BAR = {
  torque_Nm: 18,
  shearStrength_Pa: 156e6,
  faceToAxis_m: 0.0125,
  galleryBore_m: 0.0127,
  faceWidth_m: 0.025,
};

Deno.test("no full thread: the factor against stripping is 0, so that the port fails", () => {
  for (const [id, faceToAxis_m] of [["M10x1-cone", 0.0125], ["G1/8-face", 0.006]] as const) {
    const working = new Working();
    const port = sensorPort(working, { ...BAR, port: id, faceToAxis_m });
    assert(port.fullThreadAvailable_m < 0, id);
    assertEquals(port.strippingFactor, 0, id);
    assert(working.uses.some(({ result }) => result === "port.strippingFactor"), id);
    assert(port.says.some((text) => text.startsWith("No full thread is left")), id);
  }
});

Deno.test("no layer of any port begins above its face", () => {
  for (const port of Object.keys(PORTS) as PortId[]) {
    for (const faceToAxis_m of [0.004, 0.007, 0.01, 0.02]) {
      for (const reach_m of [0.003, 0.0035, 0.006]) {
        const { stack } = sensorPort(new Working(), {
          ...BAR,
          port,
          faceToAxis_m,
          reach_m,
          nose_m: 0.0045,
          drill_m: 0.012,
        });
        for (const { from_m, what } of stack) assert(from_m >= 0, `${port}: ${what} ${from_m}`);
      }
    }
  }
});

Deno.test("a seat without room has no layers; one that just has room has them all", () => {
  const at = (faceToAxis_m: number) =>
    sensorPort(new Working(), { ...BAR, port: "M10x1-cone", faceToAxis_m });
  // Gallery at c - 6.35 mm; 2 mm of metal and 2.5 mm of cone above it.
  assertEquals(at(0.0108).stack, []);
  assertEquals(at(0.0109).stack.map(({ what }) => what), [
    "tap lead and clearance, no full thread",
    "45 degree seat",
    "pilot",
    "opening into the gallery",
  ]);
});
