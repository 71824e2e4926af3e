/** Mixtures of pure liquids that stand for petrol. */
import {
  blendBulkModulus,
  blendDensity,
  PURE_FLUIDS,
  type PureFluid,
  soundSpeedFromModulus,
  waveBulkModulus,
} from "@/lib/fuel/mod.ts";
import { pureLiquid } from "./pure_liquid.ts";

/** Density [kg/m^3] and speed of sound [m/s] of further liquids at 20 °C, by CoolProp 8.0.0. */
const OTHERS_20C: Readonly<Record<string, readonly [density: number, soundSpeed: number]>> = {
  Isopentane: [620.0634, 984.5776],
  "n-Pentane": [626.1935, 1029.467],
  Isohexane: [653.1778, 1067.631],
  "o-Xylene": [880.2338, 1366.011],
  EthylBenzene: [866.8989, 1339.814],
  CycloHexane: [778.6773, 1280.423],
  "n-Octane": [702.6128, 1192.995],
};

/** Mixes liquids by volume, one after the other, as the room mixes petrol and ethanol. */
export function surrogate(shares: Readonly<Record<string, number>>, temperature: number): {
  density_kg_per_m3: number;
  isentropic_bulk_modulus_Pa: number;
  speed_of_sound_m_per_s: number;
} {
  let [volume, density, bulkModulus] = [0, 0, 0];
  for (const [name, share] of Object.entries(shares)) {
    const next = liquid(name, temperature);
    volume += share;
    const ethanolShare = share / volume; // "ethanol" is whatever is poured in next
    density = ethanolShare === 1 ? next.density : blendDensity({
      ethanolShare,
      petrolDensity: density,
      ethanolDensity: next.density,
    });
    bulkModulus = ethanolShare === 1 ? next.bulkModulus : blendBulkModulus({
      ethanolShare,
      petrolModulus: bulkModulus,
      ethanolModulus: next.bulkModulus,
    });
  }
  return {
    density_kg_per_m3: density,
    isentropic_bulk_modulus_Pa: bulkModulus,
    speed_of_sound_m_per_s: soundSpeedFromModulus({ bulkModulus, density }),
  };
}

function liquid(name: string, temperature: number): { density: number; bulkModulus: number } {
  if (name in PURE_FLUIDS) {
    const pure = pureLiquid(name as PureFluid, temperature);
    return { density: pure.density_kg_per_m3, bulkModulus: pure.isentropic_bulk_modulus_Pa };
  }
  const known = temperature === 293.15 ? OTHERS_20C[name] : undefined;
  if (!known) throw new Error(`${name} is not known at ${temperature} K`);
  const [density, soundSpeed] = known;
  return { density, bulkModulus: waveBulkModulus({ density, soundSpeed }) };
}
