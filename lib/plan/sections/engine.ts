/** The engine: what turns fuel into power, and how fast it turns. */
import { section } from "../field.ts";

/** The engine section of a plan. */
export const engine = section({
  title: "Engine",
  about: "What the fuel system has to feed.",
  fields: {
    cycle: {
      type: "choice",
      label: "Cycle",
      hint: "How often each cylinder or chamber fires",
      why: "It sets how much time an injector has for one shot",
      first: true,
      required: true,
      options: {
        "four-stroke": "four-stroke",
        "two-stroke": "two-stroke",
        rotary: "rotary",
      },
    },
    injection: {
      type: "choice",
      label: "Injection",
      hint: "Where the injectors spray",
      why: "The methods hold for injection into the intake port or runner",
      options: { port: "into the intake port or runner" },
      refused: {
        direct: {
          label: "directly into the cylinder",
          because:
            "direct injection works at 50 bar and more, where every part and test here would be wrong",
        },
      },
      default: { text: "port", because: "The only kind this tool is for", source: "ours" },
    },
    cylinders: {
      type: "count",
      label: "Cylinders or rotors",
      hint: "How many, like 4",
      why: "Each is fed by at least one injector",
      first: true,
      required: true,
      min: 1,
      max: 16,
      because: "the rail layouts here are for 1 to 16",
    },
    displacement: {
      type: "quantity",
      kind: "volume",
      label: "Swept volume",
      hint:
        "Of the whole engine, like 2.0 L or 122 in^3; a rotary: one chamber face times the rotors",
      why: "Lets the air route check the fuel need that power and BSFC give",
      min: 3e-5,
      max: 0.02,
      because: "port-injected engines of 0.03 to 20 L are what the methods were tried on",
    },
    power: {
      type: "quantity",
      kind: "power",
      label: "Target power",
      hint: "The most the engine is to make, like 420 hp or 313 kW",
      why: "It decides how much fuel has to flow",
      first: true,
      required: true,
      min: 1000,
      max: 2e6,
      because: "1 to 2000 kW is what port injection on a drilled rail is used for",
    },
    powerAt: {
      type: "choice",
      label: "Power is stated at",
      hint: "The crankshaft, or the wheels as a roller dynamometer reads",
      why: "Losses between crank and wheels also cost fuel",
      options: { crank: "the crankshaft", wheels: "the wheels" },
      default: { text: "crank", because: "BSFC is stated for the crankshaft", source: "ours" },
    },
    drivetrainLoss: {
      type: "quantity",
      kind: "ratio",
      label: "Lost between crank and wheels",
      hint: "As a share of crank power, like 15 %",
      when: (v) => v.word("engine.powerAt") === "wheels",
      otherwise: "power is stated at the crankshaft",
      min: 0,
      max: 0.4,
      because: "more than 40 % would be a broken drivetrain",
      default: {
        text: "15 %",
        because: "Two-wheel drive with a manual gearbox",
        source: "common practice, no source",
      },
    },
    powerSpeed: {
      type: "quantity",
      kind: "rotation",
      label: "Speed at that power",
      hint: "Crankshaft or eccentric shaft, like 7000 rpm",
      why: "The faster it turns, the less time for each shot",
      first: true,
      required: true,
      min: 1000 / 60,
      max: 20000 / 60,
      because: "1000 to 20 000 rpm covers port-injected engines",
    },
    maximumSpeed: {
      type: "quantity",
      kind: "rotation",
      label: "Maximum speed",
      hint: "Where the limiter cuts, like 7500 rpm",
      why: "Here the injectors have the least time",
      min: 1000 / 60,
      max: 22000 / 60,
      because: "up to 22 000 rpm, and at least the speed of the power peak",
      default: (v) => {
        const speed_rev_s = v.number("engine.powerSpeed");
        if (speed_rev_s === undefined) return undefined;
        const rpm = Math.ceil(speed_rev_s * 60 * 1.06 / 100) * 100;
        return {
          text: `${Math.min(rpm, 22000)} rpm`,
          because: "Limiters are usually set some 6 % above the power peak",
          source: "common practice, no source",
        };
      },
    },
    idleSpeed: {
      type: "quantity",
      kind: "rotation",
      label: "Idle speed",
      hint: "Like 900 rpm",
      why: "The shortest pulse the injectors must repeat is at idle",
      min: 300 / 60,
      max: 4000 / 60,
      because: "300 to 4000 rpm, and below the speed of the power peak",
      default: (v) => {
        const usual = v.word("engine.cycle") === "four-stroke" ? 900 : 1200;
        const half = Math.floor((v.number("engine.powerSpeed") ?? Infinity) * 60 / 2 / 50) * 50;
        return half >= usual
          ? {
            text: `${usual} rpm`,
            because: "A mild modified engine; wild cams and ports idle higher",
            source: "common practice, no source",
          }
          : {
            text: `${half} rpm`,
            because: "Half the speed of a power peak that is itself hardly above idle",
            source: "ours",
          };
      },
    },
    aspiration: {
      type: "choice",
      label: "Boost or none",
      hint: "Turbocharged or supercharged, or naturally aspirated",
      why: "Boost works against the injectors and adds to rail pressure",
      first: true,
      required: true,
      options: { natural: "naturally aspirated", boosted: "boosted" },
    },
    boost: {
      type: "quantity",
      kind: "pressure",
      label: "Highest boost",
      hint: "Gauge pressure in the intake manifold at full power, like 1.2 bar or 17 psi",
      why: "Rail pressure and differential pressure follow from it",
      first: true,
      when: (v) => v.word("engine.aspiration") === "boosted",
      otherwise: "the engine is said to be naturally aspirated",
      min: 5e3,
      max: 5e5,
      because: "0.05 to 5 bar gauge is what boosted port-injected engines see",
      default: {
        text: "1 bar",
        because: "A common street boost; say yours, it moves every pressure in the plan",
        source: "common practice, no source",
      },
    },
    altitude: {
      type: "quantity",
      kind: "length",
      label: "Altitude",
      hint: "Of the place where it runs, like 200 m or 1500 ft",
      why: "Air pressure there counts in every absolute pressure",
      min: -400,
      max: 4500,
      because: "roads lie between -400 and 4500 m",
      default: { text: "0 m", because: "Sea level", source: "ISO 2533 standard atmosphere" },
    },
  },
});
