/** Cautions about the system in the car. */
import { COMMON_PRACTICE, type TypedCaution } from "./caution.ts";

/** Cautions about the system in the car, by name. */
export const CAR_CAUTIONS = {
  "first-start": {
    title: "In this order",
    points: [
      {
        id: "order",
        text:
          "Look for leaks with the pump primed and the engine not running first, then at idle, " +
          "then hot.",
      },
      { id: "cut-off", text: "A second person stands at the cut-off switch." },
    ],
    source: COMMON_PRACTICE,
  },
  "prime-limit": {
    title: "The prime ends by itself",
    points: [
      {
        id: "timed",
        text:
          "The prime is timed: the pump must stop by itself when the engine does not turn, after " +
          "1 to 3 s typically.",
      },
      { id: "verify", text: "Verify it: switch on, listen, count." },
    ],
    source: COMMON_PRACTICE,
  },
  inertia: {
    title: "Impact cut-off",
    points: [
      {
        id: "fit",
        text: "Keep or fit an inertia (impact) cut-off in the pump's feed.",
      },
      { id: "trip", text: "Test it by tripping it, and know where its reset is." },
    ],
    source: COMMON_PRACTICE,
  },
  "pump-wiring": {
    title: "Wiring of a fuel pump",
    points: [
      {
        id: "battery",
        text: "Take the battery's earth lead off before any work on it, with no fuel vapour about.",
      },
      {
        id: "fuse",
        text:
          "The fuse stands close to the battery and protects the wire: never fit a larger one " +
          "than the wire bears.",
      },
      {
        id: "relay",
        text: "The pump runs over a relay that lets go by itself when the engine stops turning.",
      },
      {
        id: "joints",
        text:
          "Crimped or soldered joints, sealed, mechanically held and away from tank and vent: " +
          "a hot joint or a spark lights vapour.",
      },
      {
        id: "earth",
        text:
          "Earth the pump by a wire as thick as its feed; a rusty joint in the body loses what " +
          "the wire saves.",
      },
    ],
    source: COMMON_PRACTICE,
  },
  "hose-routing": {
    title: "Where hoses run",
    points: [
      {
        id: "distance",
        text:
          "Keep fuel lines away from the exhaust and from moving parts: a shield within about 100 " +
          "to 150 mm (4 to 6 in) of the exhaust, a clip at most every 300 to 400 mm (12 to 16 in).",
      },
      {
        id: "grommet",
        text: "A grommet at every pass-through, and no hard contact anywhere.",
      },
    ],
    source: COMMON_PRACTICE,
  },
  "hose-life": {
    title: "Hoses age",
    points: [
      {
        id: "replace",
        text:
          "Replace flexible fuel hose periodically, about every 5 to 10 years or as its maker " +
          "says, and at once if it is hard, cracked, swollen or weeping.",
      },
      { id: "re-torque", text: "Re-torque the clamps after the first heat cycle." },
    ],
    source: COMMON_PRACTICE,
  },
  "hose-rating": {
    title: "The right hose",
    points: [
      {
        id: "rated",
        text:
          "Use hose rated for injection pressure and for the alcohol content (SAE J30 R9 class or " +
          "better), never low-pressure carburettor hose.",
      },
      { id: "clamps", text: "Use clamps of the type that the hose maker states." },
    ],
    source: "SAE J30, from memory",
  },
  "hot-engine": {
    title: "Hot metal",
    points: [
      {
        id: "exhaust",
        text: "Exhaust parts stay hot enough to light fuel long after the engine stops: the " +
          "extinguisher stays in reach until they are cold.",
      },
    ],
    source: COMMON_PRACTICE,
  },
  "insurance-road": {
    title: "Before the road",
    points: [
      {
        id: "inspection",
        text:
          "A changed fuel system may need inspection, registration or notice to the insurance; a " +
          "licensed workshop should check it before road use.",
      },
    ],
    source: "National vehicle law; UN R34 and FMVSS 301 bind the vehicle's maker",
  },
} as const satisfies Record<string, TypedCaution>;
