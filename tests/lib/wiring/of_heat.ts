/** Warming of wires against published current tables and against heat transfer's own laws. */
import { assert } from "@std/assert";
import {
  ASSUMED_FILM_W_m2_K,
  COPPER_COEFFICIENT_1_K,
  currentForWarming,
  resistanceRatio,
  WIRE_REFERENCE_K,
  wireHeatPerLength,
  WIRES,
  type WireSize,
  wireWarming,
} from "@/lib/wiring/mod.ts";
import { assertClose } from "../../helpers/assert_close.ts";
import type { Check } from "../../helpers/checks.ts";

/** 33 CFR 183.425 table 5: wires in air of 30 °C with insulation of 105 °C [A]. */
const BOATS_105: readonly (readonly [WireSize, number])[] = [
  ["AWG 18", 20],
  ["AWG 16", 25],
  ["AWG 14", 35],
  ["AWG 12", 45],
  ["AWG 10", 60],
  ["AWG 8", 80],
];

/** Air and the conductor in it [K]. */
interface Heat {
  readonly air: number;
  readonly conductor: number;
}
const BOAT: Heat = { air: 303.15, conductor: 378.15 };
const VEHICLE: Heat = { air: 328.15, conductor: 373.15 };

/** Checks of what warms a wire. */
export const heatChecks: Check[] = [
  {
    name: "currents for boats lie up to a quarter below what free convection and radiation allow",
    methods: [currentForWarming],
    source: "33 CFR 183.425 table 5; film by S. W. Churchill and H. H. S. Chu (1975), " +
      "horizontal cylinder, and Stefan-Boltzmann's law at emissivity 0.9, from memory",
    provenance: "read-from-source",
    run: () => {
      for (const [size, published] of BOATS_105) {
        const most = currentAt(size, BOAT, filmOf(WIRES[size].outside_m));
        const share = published / most;
        assert(share > 0.75 && share < 0.9, `${size}: ${published} A of ${most} A`);
      }
    },
  },
  {
    name: "the assumed film allows less than the currents for boats, but over half",
    methods: [currentForWarming],
    source: "33 CFR 183.425 table 5",
    provenance: "read-from-source",
    run: () => {
      for (const [size, published] of BOATS_105) {
        const cautious = currentAt(size, BOAT, ASSUMED_FILM_W_m2_K);
        assert(cautious < published && cautious > published / 2, `${size}: ${cautious} A`);
      }
    },
  },
  {
    name: "what a metre of wire makes leaves by its outside: Newton's law over a cylinder",
    methods: [wireHeatPerLength, wireWarming, currentForWarming],
    source: "Conservation of energy in the steady state; outside of a cylinder 2 pi r L",
    provenance: "exact-solution",
    run: () => {
      const wire = WIRES["2.5 mm2"];
      const current = currentAt("2.5 mm2", VEHICLE, ASSUMED_FILM_W_m2_K);
      const ratio = ratioAt(VEHICLE.conductor);
      const made_W_m = current ** 2 * wire.resistance20_ohm_m * ratio;
      const leaves_W_m = ASSUMED_FILM_W_m2_K * 45 * 2 * Math.PI * (wire.outside_m / 2);
      assertClose(made_W_m, leaves_W_m, 1e-12);
      const heatPerLength = wireHeatPerLength({
        current,
        resistancePerLength: wire.resistance20_ohm_m,
        ratio,
      });
      assertClose(heatPerLength, leaves_W_m, 1e-12);
      const warming = wireWarming({
        heatPerLength,
        outside: wire.outside_m,
        filmCoefficient: ASSUMED_FILM_W_m2_K,
      });
      assertClose(warming, 45, 1e-12);
    },
  },
  {
    name: "every rating warms a single wire by less than 45 K, with the assumed film",
    methods: [currentForWarming],
    source: "ISO 6722 class B insulation, 100 °C, in air of 55 °C",
    provenance: "from-memory",
    run: () => {
      for (
        const [size, { rating_A }] of Object.entries(WIRES) as [WireSize, { rating_A: number }][]
      ) {
        const bears_A = currentAt(size, VEHICLE, ASSUMED_FILM_W_m2_K);
        assert(rating_A <= bears_A, `${size}: rated ${rating_A} A, bears ${bears_A} A`);
      }
    },
  },
];

/** Current that warms a wire from air of one temperature to another [A]. */
function currentAt(
  size: WireSize,
  { air, conductor }: Heat,
  filmCoefficient: number,
): number {
  const wire = WIRES[size];
  return currentForWarming({
    warming: conductor - air,
    outside: wire.outside_m,
    filmCoefficient,
    resistancePerLength: wire.resistance20_ohm_m,
    ratio: ratioAt(conductor),
  });
}

function ratioAt(temperature: number): number {
  return resistanceRatio({
    temperature,
    reference: WIRE_REFERENCE_K,
    coefficient: COPPER_COEFFICIENT_1_K,
  });
}

/** What still air takes off a horizontal wire of 105 °C in air of 30 °C [W/(m^2 K)]. */
function filmOf(outside_m: number): number {
  const { air, conductor } = BOAT;
  const film_K = (conductor + air) / 2;
  const viscosity = 1.458e-6 * film_K ** 1.5 / (film_K + 110.4);
  const conductivity = 2.495e-3 * film_K ** 1.5 / (film_K + 194);
  const kinematic = viscosity / (101325 / (287.05 * film_K));
  const prandtl = 1007 * viscosity / conductivity;
  const rayleigh = 9.80665 / film_K * (conductor - air) * outside_m ** 3 / kinematic ** 2 *
    prandtl;
  const nusselt = (0.6 +
    0.387 * rayleigh ** (1 / 6) / (1 + (0.559 / prandtl) ** (9 / 16)) ** (8 / 27)) ** 2;
  const radiation = 0.9 * 5.670374e-8 * (conductor ** 2 + air ** 2) * (conductor + air);
  return nusselt * conductivity / outside_m + radiation;
}
