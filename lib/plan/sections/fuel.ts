/** The fuel and the temperatures it is used at. */
import { type Condition, section } from "../field.ts";

/** There is petrol in the fuel, so its own data count and its share may vary. */
const hasPetrol: Condition = (v) =>
  v.word("fuel.name") !== "methanol" && v.word("fuel.name") !== "E100";

/** The fuel section of a plan. */
export const fuel = section({
  title: "Fuel",
  about: "Which fuel, and how hot it gets.",
  fields: {
    name: {
      type: "choice",
      label: "Fuel",
      hint: "What is in the tank at full power",
      why: "Heating value sets how much is needed, density how it flows",
      first: true,
      required: true,
      options: {
        petrol: "petrol without ethanol",
        E10: "E10 (10 % ethanol)",
        E20: "E20 (20 % ethanol)",
        E85: "E85 (85 % ethanol)",
        E100: "ethanol",
        blend: "another blend of petrol and ethanol",
        methanol: "methanol",
      },
      refused: {
        diesel: {
          label: "diesel",
          because: "diesel is injected at hundreds of bar into the cylinder, outside these methods",
        },
        gas: {
          label: "LPG, CNG or hydrogen",
          because:
            "gaseous fuels need pressure vessels and gas-tight parts that these methods do not cover",
        },
      },
    },
    ethanolShare: {
      type: "quantity",
      kind: "ratio",
      label: "Ethanol share",
      hint: "By volume, like 40 %",
      first: true,
      when: (v) => v.word("fuel.name") === "blend",
      otherwise: "it counts only with “another blend” for the fuel",
      min: 0,
      max: 1,
      because: "a share lies between 0 and 100 %",
      default: {
        text: "30 %",
        because: "A blend was chosen without its share: measure it, it moves every flow",
        source: "ours",
      },
    },
    petrolDensity: {
      type: "quantity",
      kind: "density",
      label: "Density of the petrol at 15 °C",
      hint: "Of the petrol alone, before any ethanol, like 745 kg/m^3",
      when: hasPetrol,
      otherwise: "there is no petrol in the fuel",
      min: 700,
      max: 790,
      because: "EN 228 petrol lies at 720 to 775 kg/m3; race petrols a little beyond",
      default: {
        text: "745 kg/m^3",
        because: "Middle of the range of pump petrol",
        source: "EN 228",
      },
    },
    vapourPressure: {
      type: "quantity",
      kind: "pressure",
      reference: "absolute",
      label: "Vapour pressure of the petrol at 37.8 °C",
      hint: "DVPE or Reid, absolute: summer 45 to 60 kPa, winter up to 100 kPa",
      when: hasPetrol,
      otherwise: "there is no petrol in the fuel",
      min: 3e4,
      max: 1.05e5,
      because: "EN 228 classes run from 45 to 100 kPa",
      default: { text: "60 kPa", because: "Upper end of summer petrol", source: "EN 228 class A" },
    },
    temperature: {
      type: "quantity",
      kind: "temperature",
      label: "Fuel temperature in the rail",
      hint: "At full power, engine hot, like 40 °C or 105 °F",
      why: "Warm fuel is thinner and lighter",
      min: 273.15,
      max: 333.15,
      because: "the property data hold from 0 to 60 °C",
      default: {
        text: "40 °C",
        because: "Returned fuel under a warm bonnet",
        source: "common practice, no source",
      },
    },
    hottestTank: {
      type: "quantity",
      kind: "temperature",
      label: "Hottest fuel in the tank",
      hint: "After a long hot day, like 45 °C",
      why: "Vapour at the pump's inlet starts here",
      min: 273.15,
      max: 333.15,
      because: "the property data hold from 0 to 60 °C",
      default: {
        text: "45 °C",
        because: "A recirculating system on a hot day",
        source: "common practice, no source",
      },
    },
    soakTemperature: {
      type: "quantity",
      kind: "temperature",
      label: "Fuel in the rail after key-off",
      hint: "At its hottest, engine hot and standing, like 85 °C or 185 °F",
      why: "Fuel that boils in the rail makes a hot engine hard to start",
      min: 333.15,
      max: 393.15,
      because: "60 to 120 °C, from where running ends to where hoses do",
      default: {
        text: "85 °C",
        because: "A rail on a hot engine, some minutes after a hard drive",
        source: "common practice, no source",
      },
    },
    blends: {
      type: "list",
      label: "Blend",
      title: "Ethanol shares to compare",
      hint:
        "The whole plan is worked out at each, like 0 %, 10 %, 51 % and 85 % of a flex-fuel car",
      max: 6,
      rows: 1,
      when: hasPetrol,
      otherwise: "the fuel is no blend of petrol and ethanol",
      fields: {
        ethanolShare: {
          type: "quantity",
          kind: "ratio",
          label: "Ethanol share",
          hint: "By volume, like 51 %",
          min: 0,
          max: 1,
          because: "a share lies between 0 and 100 %",
        },
      },
    },
  },
});
