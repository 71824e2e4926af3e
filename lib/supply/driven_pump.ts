/** A pump that the engine drives: what each turn displaces, less what slips back. */
import { type Method, method, type MethodInput } from "@/lib/method/mod.ts";
import { FLOW } from "./limits.ts";

/** Speed of a shaft, in turns a second. */
const SPEED: MethodInput = {
  unit: "1/s",
  min: 0,
  max: 1000,
  says: "Speed of the pump",
  symbol: "n_p",
};

const DISPLACEMENT: MethodInput = {
  unit: "m^3",
  min: 0,
  max: 1e-3,
  says: "Volume that the pump displaces in a turn",
  symbol: "V_d",
};

const SLIP: MethodInput = {
  ...FLOW,
  says: "Flow that slips back through the pump's gaps at that pressure",
  symbol: "Q_s",
};

/**
 * Speed [1/s] of a pump that the engine drives. Source: definition of the drive ratio.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example Half the speed of the crank, at 6000 rpm
 * ```ts
 * import { assertEquals } from "@std/assert";
 *
 * assertEquals(pumpSpeedFromEngine({ engineSpeed: 100, driveRatio: 0.5 }), 50);
 * ```
 */
export const pumpSpeedFromEngine: Method<Record<"engineSpeed" | "driveRatio", MethodInput>> =
  method({
    id: "pump-speed-from-engine",
    title: "Speed of an engine-driven pump",
    inputs: {
      engineSpeed: { unit: "1/s", min: 0, max: 300, says: "Speed of the engine", symbol: "n" },
      driveRatio: {
        unit: "-",
        min: 0.05,
        max: 3,
        says: "Turns of the pump for each turn of the crank",
        symbol: "i",
      },
    },
    output: { ...SPEED, name: "pumpSpeed" },
    formula: "engineSpeed * driveRatio",
    source: "Definition of the drive ratio",
    compute: ({ engineSpeed, driveRatio }) => engineSpeed * driveRatio,
  });

/**
 * Volume [m^3] that a pump displaces in a turn, from the flow it gives against no pressure, where
 * nothing slips back.
 *
 * Source: definition of displacement, as in ISO 4391.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example 360 L/h at 3000 rpm: 2 cm3 a turn
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * assertAlmostEquals(pumpDisplacement({ freeFlow: 1e-4, pumpSpeed: 50 }), 2e-6, 1e-18);
 * ```
 */
export const pumpDisplacement: Method<Record<"freeFlow" | "pumpSpeed", MethodInput>> = method({
  id: "pump-displacement",
  title: "Displacement of a pump",
  inputs: {
    freeFlow: { ...FLOW, says: "Flow against no pressure", symbol: "Q_0" },
    pumpSpeed: { ...SPEED, min: 1, says: "Speed at which it was taken" },
  },
  output: { ...DISPLACEMENT, name: "displacement", max: 0.1 },
  formula: "freeFlow / pumpSpeed",
  source: "Definition of displacement, as in ISO 4391",
  compute: ({ freeFlow, pumpSpeed }) => freeFlow / pumpSpeed,
});

/**
 * Flow [m^3/s] that slips back through a pump's gaps, from one stated point: what its turns
 * displace less what it gives. Negative when the figures can't belong together.
 *
 * Source: definition of volumetric loss, as in ISO 4391.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example 2 cm3 a turn at 3000 rpm, of which 324 L/h come out at 5 bar
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * const slip_m3_s = slipOf({ displacement: 2e-6, pumpSpeed: 50, statedFlow: 9e-5 });
 *
 * assertAlmostEquals(slip_m3_s, 1e-5, 1e-15);
 * ```
 */
export const slipOf: Method<Record<"displacement" | "pumpSpeed" | "statedFlow", MethodInput>> =
  method({
    id: "slip-of",
    title: "Slip of a pump from a stated point",
    inputs: {
      displacement: DISPLACEMENT,
      pumpSpeed: { ...SPEED, says: "Speed at the stated point" },
      statedFlow: { ...FLOW, says: "Flow at the stated point", symbol: "Q" },
    },
    output: { ...SLIP, name: "slip", min: -0.1, max: 1 },
    formula: "displacement * pumpSpeed - statedFlow",
    source: "Definition of volumetric loss, as in ISO 4391",
    compute: ({ displacement, pumpSpeed, statedFlow }) => displacement * pumpSpeed - statedFlow,
  });

/**
 * Flow [m^3/s] of a pump that the engine drives: what its turns displace, less the slip, which
 * goes by pressure and not by speed. Negative when more slips back than its turns displace:
 * then it can't hold that pressure, as at cranking speed.
 *
 * Source: W. E. Wilson, Positive-Displacement Pumps and Fluid Motors (1950).
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example Half the speed gives less than half the flow
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * const flow_m3_s = drivenPumpFlow({ displacement: 2e-6, pumpSpeed: 25, slip: 1e-5 });
 *
 * assertAlmostEquals(flow_m3_s, 4e-5, 1e-15);
 * ```
 */
export const drivenPumpFlow: Method<Record<"displacement" | "pumpSpeed" | "slip", MethodInput>> =
  method({
    id: "driven-pump-flow",
    title: "Flow of an engine-driven pump",
    inputs: { displacement: DISPLACEMENT, pumpSpeed: SPEED, slip: SLIP },
    output: { ...FLOW, name: "flow", min: -0.1, max: 1, says: "Flow of the pump" },
    formula: "displacement * pumpSpeed - slip",
    source: "W. E. Wilson, Positive-Displacement Pumps and Fluid Motors (1950), from memory",
    compute: ({ displacement, pumpSpeed, slip }) => displacement * pumpSpeed - slip,
  });
