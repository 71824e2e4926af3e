/** Plans to try the ladder and the lists on, each different where it matters. */
import { Working } from "@/lib/method/mod.ts";
import {
  type Fault,
  proofNumbers,
  proofPressures,
  type ProofPressuresInput,
  type WeakestPart,
} from "@/lib/proof/mod.ts";
import type { ProofContext } from "@/lib/walkround/mod.ts";

/** What a context is made from; the rest is common to all. */
interface Sketch {
  readonly fuel: ProofContext["fuel"];
  readonly layout?: ProofContext["layout"];
  readonly reference?: ProofContext["reference"];
  readonly rails?: number;
  readonly injectorsPerRail?: number;
  readonly fault?: Fault;
  readonly weakest?: WeakestPart;
  readonly hose_m3?: number;
  readonly gaugeResolution_Pa?: number;
  readonly sensorRange_Pa?: number;
  readonly boosted?: boolean;
  readonly pumpPlace?: "tank" | "outside";
}

/** Makes the context of a plan at 3 bar, with 1 bar of boost unless it is told to have none. */
export function contextOf(sketch: Sketch): ProofContext {
  const { fuel, layout = "return", reference = "manifold" } = sketch;
  const gaugeResolution_Pa = sketch.gaugeResolution_Pa ?? 2000;
  const input: ProofPressuresInput = {
    setPressure_Pa: 3e5,
    boost_Pa: sketch.boosted === false ? 0 : 1e5,
    reference,
    fault: sketch.fault,
    weakest: sketch.weakest,
  };
  const pressures = proofPressures(new Working(), input);
  const numbers = proofNumbers(new Working(), {
    pressures,
    bore_m: 0.0127,
    length_m: 0.42,
    hose_m3: sketch.hose_m3 ?? 1e-4,
    airPressure_Pa: 5e4,
    gaugeResolution_Pa,
    temperature_K: 293.15,
    ambient_Pa: 101_325,
    fuel: { density_kg_m3: 760, viscosity_Pa_s: 5e-4, molarMass_kg_mol: 0.1, lowerLimit: 0.014 },
  });
  return {
    fuel,
    layout,
    reference,
    boosted: sketch.boosted ?? true,
    rails: sketch.rails ?? 1,
    injectorsPerRail: sketch.injectorsPerRail ?? 4,
    setPressure_Pa: 3e5,
    railIdle_Pa: reference === "manifold" ? 2.4e5 : 3e5,
    pressures,
    fault: sketch.fault,
    weakest: sketch.weakest,
    numbers,
    gaugeResolution_Pa,
    temperature_K: 293.15,
    sensorRange_Pa: sketch.sensorRange_Pa,
    pumpPlace: sketch.pumpPlace,
  };
}

/** Petrol with little ethanol. */
export const E10 = { base: "petrol", ethanolShare: 0.1 } as const;
/** Mostly ethanol. */
export const E85 = { base: "petrol", ethanolShare: 0.85 } as const;
/** Methanol. */
export const METHANOL = { base: "methanol", ethanolShare: 0 } as const;

/** A plan for each turn that the texts take. */
export const CONTEXTS: Readonly<Record<string, ProofContext>> = {
  "E10 with a return": contextOf({ fuel: E10 }),
  "E85, dead-ended, pump outside": contextOf({
    fuel: E85,
    layout: "dead-ended",
    reference: "atmosphere",
    pumpPlace: "outside",
    fault: { pressure_Pa: 8e5, cause: "pump", isLeast: false },
    weakest: { part: "feed hose", rating_Pa: 17e5 },
  }),
  "methanol, two rails": contextOf({
    fuel: METHANOL,
    rails: 2,
    pumpPlace: "tank",
    fault: { pressure_Pa: 12e5, cause: "pump", isLeast: true },
    weakest: { part: "feed hose", rating_Pa: 9e5 },
    sensorRange_Pa: 7e5,
    hose_m3: 1e-3,
  }),
  "E10 without boost": contextOf({ fuel: E10, boosted: false }),
  "a hose too weak to work": contextOf({
    fuel: E10,
    fault: { pressure_Pa: 8e5, cause: "pump", isLeast: false },
    weakest: { part: "feed hose", rating_Pa: 3e5 },
    gaugeResolution_Pa: 1,
  }),
};
