/** The pressure sensor to ask for. */
import { SECTIONS } from "@/lib/plan/mod.ts";
import { CRITERIA } from "../criteria.ts";
import { about, atLeast, pieces, type Wanted } from "./item.ts";
import type { Shop } from "./shop.ts";

/** The sensor of the rail. */
export function wantedSensor(shop: Shop): Wanted[] {
  const { evaluation, values } = shop;
  const working_Pa = evaluation.results.proof?.pressures.workingPressure_Pa;
  const { port, supply } = values.sensor;
  return [{
    id: "pressure-sensor",
    what: "Fuel pressure sensor",
    quantity: pieces(1),
    figures: [
      ...(working_Pa === undefined
        ? []
        : [atLeast("range (gauge)", working_Pa * CRITERIA.sensorRange.aim, "pressure")]),
      about("supply", supply, "voltage"),
    ],
    facts: [
      { name: "port", says: SECTIONS.sensor.fields.port.options[port] },
      { name: "fuel", says: shop.fuel },
    ],
    missing: working_Pa === undefined ? [`Range: ${shop.because(CRITERIA.sensorRange)}`] : [],
    because: "The highest working pressure, waves included, and the aim of the check on top.",
    from: ["sensor.port", "sensor.supply", "regulator.setPressure"],
  }];
}
