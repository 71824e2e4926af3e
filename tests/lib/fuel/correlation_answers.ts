/** How the room answers `fuel-correlations.json`: with its own coefficients, not those of the case. */
import {
  blendBulkModulus,
  blendDensity,
  liquidDensity,
  liquidSoundSpeed,
  liquidVapourPressure,
  liquidViscosity,
  petrolViscosity,
  PURE_FLUIDS,
  type PureFluid,
  soundSpeedFromModulus,
} from "@/lib/fuel/mod.ts";
import type { AnyMethod } from "@/lib/method/mod.ts";
import type { Answers } from "../../helpers/checks.ts";
import { surrogate } from "./surrogates.ts";

interface Temperatures {
  readonly temperatures_K: readonly number[];
}

function over({ temperatures_K }: Temperatures, at: (temperature: number) => number) {
  return { values_SI: temperatures_K.map(at) };
}

/** Each fit by the word that the files end its quantity with. */
const FITS: Readonly<
  Record<string, { method: AnyMethod; at: (fluid: PureFluid, temperature: number) => number }>
> = {
  density: {
    method: liquidDensity,
    at: (fluid, temperature) => liquidDensity({ temperature, ...PURE_FLUIDS[fluid].density }),
  },
  sound: {
    method: liquidSoundSpeed,
    at: (fluid, temperature) => liquidSoundSpeed({ temperature, ...PURE_FLUIDS[fluid].soundSpeed }),
  },
  "viscosity-vogel": {
    method: liquidViscosity,
    at: (fluid, temperature) => liquidViscosity({ temperature, ...PURE_FLUIDS[fluid].viscosity }),
  },
  antoine: {
    method: liquidVapourPressure,
    at: (fluid, temperature) =>
      liquidVapourPressure({ temperature, ...PURE_FLUIDS[fluid].vapourPressure }),
  },
};

const FITTED: readonly PureFluid[] = ["n-heptane", "isooctane", "toluene", "ethanol", "methanol"];

export const correlationAnswers: Answers = {
  ...Object.fromEntries(
    FITTED.flatMap((fluid) =>
      Object.entries(FITS).map(([name, { method, at }]) => [
        `correlation for ${fluid}: ${name}`,
        {
          methods: [method],
          run: (i: Temperatures) => over(i, (temperature) => at(fluid, temperature)),
        },
      ])
    ),
  ),
  "correlation for petrol: kinematic viscosity": {
    methods: [petrolViscosity],
    run: (i: Temperatures) => over(i, (temperature) => petrolViscosity({ temperature })),
  },
  // Answered by mixing; the line for petrol is held against this curve in checks.ts.
  "correlation for petrol surrogate TRF*": {
    methods: [blendDensity, blendBulkModulus, soundSpeedFromModulus],
    run: (i: Temperatures) =>
      over(
        i,
        (temperature) =>
          surrogate({ isooctane: 0.5, "n-heptane": 0.15, toluene: 0.35 }, temperature)
            .speed_of_sound_m_per_s,
      ),
  },
};
