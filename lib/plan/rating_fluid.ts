/** The liquid that injector flows are stated with. */
import { ratingFluidDensity } from "@/lib/fuel/mod.ts";

/** Density of n-heptane at 20 °C [kg/m^3], the liquid of flow sheets (SAE J1832, from memory). */
export const RATING_DENSITY_KG_M3: number = ratingFluidDensity({ temperature: 293.15 });
