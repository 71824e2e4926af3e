/** The order of work on the ports and the screws' holes. */
import { COARSE } from "../drill/held.ts";
import { failingPortChecks } from "../drill/port_checks.ts";
import { PORTS, SHOP_PRACTICE, threadOf } from "@/lib/thread/mod.ts";
import { screwPlaces } from "../drill/places.ts";
import { type Bench, idsOf, titlesOf } from "./bench.ts";
import { COMMON_PRACTICE, type TypedOperation } from "./operation.ts";
import { describe } from "./order_gallery.ts";

/** Sensor's port, the others, the screws. */
export function portOrder(bench: Bench): readonly TypedOperation[] {
  return [sensorPort(bench), ...otherPorts(bench), screwHoles(bench)];
}

function sensorPort(bench: Bench): TypedOperation {
  const { sensor, values, evaluation } = bench;
  const { title } = PORTS[values.sensor.port];
  const failing = failingPortChecks(evaluation);
  const { port } = evaluation.results;
  const isCone = PORTS[values.sensor.port].seal === "cone";
  return {
    id: "sensor-port",
    title: `Sensor port: ${title}`,
    // A port that must not be drilled as planned has no depths to drill to.
    does: sensor === undefined || failing.length > 0
      ? ["Leave it until it fits."]
      : isCone
      ? coneSteps(bench)
      : [sentence(describe(bench, sensor)), inLine(bench)],
    why: isCone
      ? "Pilot, seat and thread in one set-up: a seat that is not square to its thread seals on one side. The pilot first, as the spotting drill's middle does not cut, and its point needs somewhere to go."
      : "Drill, face and thread in one set-up: what seals has to stand square to the thread.",
    ...((sensor === undefined || failing.length > 0) && {
      blocked: port?.changeFirst ??
        (failing.length > 0
          ? `Do not drill it: ${failing.map((check) => check.because).join(" ")}`
          : "It does not fit as planned. Do not drill it."),
    }),
    cautions: ["taps"],
    holes: sensor === undefined ? [] : [sensor.id],
    source: COMMON_PRACTICE,
  };
}

function sentence(text: string): string {
  return `${text.charAt(0).toUpperCase()}${text.slice(1)}.`;
}

/** The order of a seat at the bottom: pilot, pointed drill down to its stop, bottoming tap. */
function coneSteps(bench: Bench): readonly string[] {
  const { sensor, values, evaluation } = bench;
  const { port } = evaluation.results;
  const { thread } = PORTS[values.sensor.port];
  if (sensor === undefined || port === undefined) return [];
  const { pilot_m, spotPoint_m, seatDepth_m, drill_m } = port;
  return [
    ...(pilot_m === undefined ? [] : [
      `${bench.size(pilot_m)} pilot through into the gallery.`,
    ]),
    `Then the 90 degree spotting drill of ${
      bench.size(drill_m)
    }, down to where the seat begins at ${bench.say(seatDepth_m)}${
      spotPoint_m === undefined
        ? ""
        : `: set to nought on its tip, it stops at ${bench.say(seatDepth_m + spotPoint_m)}`
    }. It leaves both the 45 degree seat and the tapping size.`,
    `Then tap ${thread} with a bottoming tap${
      sensor.thread === undefined ? "" : `, full thread to ${bench.say(sensor.thread.to_m)}`
    }; feel for its bottom, and do not drive it onto the seat.`,
    `Another ${
      bench.limit(1e-4)
    } of depth makes the seat twice that much wider: use the depth stop, and try it in the offcut.`,
    inLine(bench),
  ];
}

function inLine(bench: Bench): string {
  return bench.values.rail.count > 1
    ? "One sensor needs one port: drill it in one rail only."
    : "Drill into the gallery slowly: the drill grabs as it breaks through.";
}

function otherPorts(bench: Bench): readonly TypedOperation[] {
  const { ports } = bench;
  if (ports.length === 0) return [];
  return [{
    id: "other-ports",
    title: "The other ports",
    does: ports.map((hole) => `${hole.title}: ${describe(bench, hole)}.`),
    why: "Each in one set-up from spot to tap; only the depth stop is moved.",
    cautions: ["taps"],
    holes: idsOf(ports),
    source: COMMON_PRACTICE,
  }];
}

function screwHoles(bench: Bench): TypedOperation {
  const { screws, values } = bench;
  const { thread, engagement } = values.holdDown;
  const bore = screws[0]?.profile.find(({ cut }) => cut === "bore");
  const { places } = screwPlaces(values);
  const { tappingDrillName } = threadOf(COARSE[thread]);
  return {
    id: "screw-holes",
    title: "Holes for the hold-down screws",
    does: [
      bore === undefined
        ? `No screw goes through the bar: drill the brackets for ${thread}, at ${
          places.map(({ at_m }) => bench.say(at_m)).join(" and ")
        } along the rail.`
        : `${titlesOf(screws)}: Ø ${
          bench.size(bore.fromDiameter_m)
        } right through, from the face where the heads sit; the burr goes off both faces.`,
      `In the manifold or bracket: drill ${tappingDrillName}, tap ${COARSE[thread]} for ${
        bench.say(engagement)
      } of thread.`,
      SHOP_PRACTICE["guide-the-tap"].says((length_m) => bench.say(length_m)),
    ],
    why:
      "After the pockets: set the bar on its injectors first, and the screws' places can be spotted through it.",
    cautions: ["taps"],
    holes: idsOf(screws),
    source: COMMON_PRACTICE,
  };
}
