/** What the parts of a result's name mean: "rail.sections.1.velocity_m_s" is section 2 of the rail. */
import { type SectionName, SECTIONS } from "@/lib/plan/mod.ts";
import { capital } from "./show.ts";

/** The subjects of an evaluation that no section of the plan is called by, or not well. */
const SUBJECTS: Readonly<Record<string, string>> = {
  pressures: "Pressures",
  fuel: "Fuel at rail temperature",
  shopFuel: "Fuel at shop temperature",
  lines: "Hoses and fittings",
  vapour: "Vapour",
  surge: "Surge tank",
  heat: "Heat and priming",
  bar: "Bar and gallery",
  port: "Sensor port",
  seal: "Pockets and O-rings",
  stack: "Heights of the injectors",
  bosses: "The manifold's bosses",
  float: "Play of the injectors",
  holdDown: "Hold-down",
  plugs: "Plugs and ports",
  proof: "Leak tests",
  ceilings: "Power ceilings",
  tuner: "For the tuner",
};

/** The steps between the subject and the number. */
const PLACES: Readonly<Record<string, string>> = {
  peak: "power peak",
  maximum: "maximum speed",
  idle: "idle",
  injectorsPeak: "power peak",
  injectorsMaximum: "maximum speed",
  petrol: "petrol alone",
  ethanol: "ethanol alone",
  stated: "at the voltage of its figures",
  lowerVoltage: "lower voltage",
  upperVoltage: "upper voltage",
  cooler: "at 50 °C",
  warmer: "at 60 °C",
  tank: "hottest tank",
  soak: "rail after key-off",
  feed: "feed",
  suction: "suction",
  branch: "branch",
  return: "return",
  least: "least squeeze",
  most: "most squeeze",
  fullest: "fullest groove",
  widest: "widest on its groove",
  leadIn: "lead-in",
  insertion: "past the lead-in",
  room: "to the bottom",
  atMost: "that all parts allow",
  atLeast: "that the aim takes",
  againstPressure: "against pressure",
  "plug-datum": "datum end",
  "plug-far": "far end",
};
/** What is counted, by the step before the number; injectors' stages where there is none. */
const COUNTED: Readonly<Record<string, string>> = {
  sections: "section",
  takeOffs: "take-off",
  feed: "piece",
  suction: "piece",
  branch: "piece",
  return: "piece",
  injectors: "injector",
  bosses: "boss",

  screws: "screw",
  gaps: "gap",
  port: "port",
};

/** What the number is of, where its method's words hold for several things. */
const OF: Readonly<Record<string, string>> = {
  fuelByPower: "from power and BSFC",
  fuelByAir: "from the air",
  fuelIdle: "idle",
  airDensity: "power peak",
  air: "power peak",
  airDensityIdle: "idle",
  airIdle: "idle",
  intervalPeak: "injections at the power peak",
  intervalMaximum: "injections at maximum speed",
  intervalIdle: "injections at idle",
  staticFlow: "static flow in use",
  flowNeededAtRating: "needed, at the rating",
  openFlow: "all injectors of the stage, open",
  changeoverFuel: "primary at changeover",
  available: "all pumps",
  flowOfOne: "one pump",
  flowOfOneScaled: "one pump, carried to the voltage",
  tablePressure: "carried to the voltage of its figures",
  "feed-velocity": "feed",
  "suction-velocity": "suction",
  "return-velocity": "return",
  frictionAt4000: "turbulent, at Reynolds 4000",
  frictionLow: "as laminar flow",
  frictionHigh: "as turbulent flow",
  pressureDropLow: "as laminar flow",
  pressureDropHigh: "as turbulent flow",
  flowSpreadNoRecovery: "no pressure regained at take-offs",
  flowSpreadFullRecovery: "all pressure regained at take-offs",
  flowSpread: "the worse of both",
  airEnergy: "air at proof pressure",
  workingAirEnergy: "air at working pressure",
  liquidEnergy: "liquid at proof pressure",
  testLeak: "in the test",
  timeToSee: "until the gauge shows it",
  bubbleLeak: "least that bubbles show",
  spillVapour: "of what may spill",
  fuelUnseen: "that the test leaves unseen",
  expectedFall: "at the leak allowed",
  airViscosity: "air",
  drift: "drill along the bar",
  hoop: "proof pressure",
  peak: "proof pressure",
  hoopWorking: "working pressure",
  peakWorking: "working pressure",
  plugForce: "on an end plug",
  liftPerInjector: "lifting the rail, at each injector",
  firstOpening: "gallery, where the drill breaks in",
  lastOpening: "gallery, where the drill is wholly in",
  pilotOpened: "pilot, wholly in the gallery",
  coneDepth: "whole",
  toCircle: "down to the sealing circle",
  seatAt: "nose on its seat",
  fullThreadAvailable: "there is",
  fullThreadForTorque: "needed for the torque",
  wallAround: "around the port",
  feed: "feed at its velocity limit",
  suction: "suction at its velocity limit",
  inlet: "pump's inlet, at its lowest",
  soak: "rail after key-off",
  inletMargin: "pump's inlet",
  soakMargin: "rail after key-off",
  byPump: "by the pump",
  byReturn: "by what returns",
  stretchMost: "at most",
  fillNominal: "as drawn",
  fillMost: "at most",
  squeezeNominal: "as drawn",
  squeezeLeast: "at least",
  squeezeMost: "at most",
  shiftWorst: "all at their worst",
  shiftByChance: "by chance",
  leadLength: "as drawn",
};

/** The heading of a subject, by the first step of its results' names. */
export function subjectTitle(subject: string): string {
  if (Object.hasOwn(SUBJECTS, subject)) return SUBJECTS[subject] ?? subject;
  if (Object.hasOwn(SECTIONS, subject)) return SECTIONS[subject as SectionName].title;
  return capital(inWords(subject));
}

/** Which of several numbers of the same sort a result is; blank where there is nothing to tell. */
export function partOf(result: string): string {
  const steps = result.split(".").slice(1);
  const key = (steps.pop() ?? "").split("_")[0] ?? "";
  const parts = steps.map((step, i) => {
    if (!/^\d+$/.test(step)) return PLACES[step] ?? (COUNTED[step] === undefined && inWords(step));
    return `${COUNTED[steps[i - 1] ?? ""] ?? "stage"} ${Number(step) + 1}`;
  });
  return [...parts, OF[key]].filter(Boolean).join(", ");
}

function inWords(key: string): string {
  return key.replaceAll(/[A-Z]/g, (capitalLetter) => ` ${capitalLetter.toLowerCase()}`);
}
