/** The numbers of the Size sheet as rows. */
import { formatNumber, formatQuantity, inBoth, type Kind } from "@/lib/units/mod.ts";
import type { NumberRow } from "./number_table.ts";
import type { PlanShown } from "./plan_shown.ts";

/** A row for a quantity; nothing where there is none. */
export function quantityRow(
  shown: PlanShown,
  label: string,
  value: number | undefined,
  kind: Kind,
  note?: string,
): NumberRow[] {
  if (value === undefined) return [];
  return [{
    label,
    value: formatQuantity(value, kind, shown.system),
    ...(note !== undefined && { note }),
  }];
}

/** Fuel, pressures and what the rail does with them. */
export function needRows(shown: PlanShown): NumberRow[] {
  const { demand, pressures, rail } = shown.evaluation.results;
  const row = quantityRow.bind(undefined, shown);
  return [
    ...row("Fuel at full power", demand?.fuel_kg_s, "massFlow", volumeNote(shown)),
    ...row("Fuel by air", demand?.fuelByAir_kg_s, "massFlow", "the cross-check"),
    ...row("Fuel at idle", demand?.fuelIdle_kg_s, "massFlow"),
    ...row("Density of the fuel", demand?.fuel.density_kg_m3, "density", "at rail temperature"),
    ...row("Mean effective pressure", demand?.bmep_Pa, "pressure"),
    ...row("Outside air", pressures?.ambient_Pa, "pressure", "absolute"),
    ...row("Rail pressure at full power", pressures?.railPeak_Pa, "pressure", "gauge"),
    ...row("Across the injectors at full power", pressures?.differentialPeak_Pa, "pressure"),
    ...row("Across the injectors at idle", pressures?.differentialIdle_Pa, "pressure"),
    ...row("Velocity at the rail's feed end", rail?.steady.inletVelocity_m_s, "velocity"),
    ...reynolds(shown),
    ...row("Volume of one gallery", rail?.volumes?.galleryVolume_m3, "volume", shots(shown)),
  ];
}

function volumeNote({ evaluation, system }: PlanShown): string | undefined {
  const { demand } = evaluation.results;
  return demand && `${inBoth(demand.fuelVolume_m3_s, "pumpFlow", system)} of liquid`;
}

function reynolds({ evaluation }: PlanShown): NumberRow[] {
  const { rail } = evaluation.results;
  if (!rail) return [];
  const { inletReynolds, inletRegime } = rail.steady;
  return [{
    label: "Reynolds number there",
    value: formatNumber(inletReynolds),
    note: `${inletRegime} flow`,
  }];
}

function shots({ evaluation }: PlanShown): string | undefined {
  const volumes = evaluation.results.rail?.volumes;
  if (!volumes || volumes.shotShare <= 0) return undefined;
  return `${formatNumber(1 / volumes.shotShare)} shots of one injector at full power`;
}
