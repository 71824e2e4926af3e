/** Rubbers of O-rings against fuel. */
import { type AgainstFuel, fails, marginal, meets } from "./against_fuel.ts";

/** A rubber that O-rings are made of. */
export type Elastomer = "FKM" | "FKM-70" | "NBR" | "HNBR" | "FVMQ" | "EPDM";

const ROOM = "Leave room for swell: a fill of at most 85 % at the worst limits.";
const STATED = "Only a grade whose maker states this fuel; renew it at every strip-down.";

/** Rubbers of O-rings, by the letters of ISO 1629. */
export const ELASTOMERS: Readonly<Record<Elastomer, AgainstFuel>> = {
  FKM: {
    title: "Fluorocarbon rubber, general grade (about 66 % fluorine)",
    fuels: {
      petrol: meets("ornl", "It swells least of the common fuel rubbers."),
      E10: meets("ornl", "Alcohol adds to the swell, which stays moderate.", ROOM),
      E85: meets(
        "e85Guide",
        "Named among the resistant ones; it swells moderately.",
        `Prefer a grade with more fluorine, cured by peroxide. ${ROOM}`,
      ),
      methanol: fails(
        "methanolBulletin",
        "General grades swell strongly in neat methanol.",
        "Take a grade of about 70 % fluorine whose maker states methanol.",
      ),
    },
  },
  "FKM-70": {
    title: "Fluorocarbon rubber, high in fluorine (about 70 %)",
    fuels: {
      petrol: meets("ornl", "As the general grade, with less swell."),
      E10: meets("ornl", "As the general grade, with less swell."),
      E85: meets("methanolBulletin", "More fluorine, less swell in alcohol.", ROOM),
      methanol: meets(
        "methanolBulletin",
        "Grades of this kind are made for neat methanol.",
        "Only one whose maker states methanol, and state the lowest temperature when asking.",
      ),
    },
  },
  NBR: {
    title: "Nitrile rubber",
    fuels: {
      petrol: meets(
        "ornl",
        "Usable: it swells by 15 to 25 % in aromatic petrol, and shrinks and hardens when dried.",
        `Renew it when the system has stood dry. ${ROOM}`,
      ),
      E10: marginal("ornl", "Alcohol adds to the swell, and it embrittles when dried.", STATED),
      E85: marginal("e85Guide", "Called resistant, but it embrittles when dried.", STATED),
      methanol: marginal("methanolBulletin", "It depends on the grade.", STATED),
    },
  },
  HNBR: {
    title: "Hydrogenated nitrile rubber",
    fuels: {
      petrol: meets("ours", "As nitrile, and it bears more heat.", ROOM),
      E10: marginal(
        "hnbr",
        "From 5 to 10 % ethanol it lost 13 points of hardness and 62 % of its strength.",
        STATED,
      ),
      E85: marginal("ours", "No test known to us; E10 softened it.", STATED),
      methanol: marginal("ours", "No test known to us; E10 softened it.", STATED),
    },
  },
  FVMQ: {
    title: "Fluorosilicone rubber",
    fuels: {
      petrol: meets(
        "ornl",
        "Dried, it comes back to its size; good in the cold, weak when rubbed.",
        "Only where nothing moves.",
      ),
      E10: meets(
        "ornl",
        "Dried, it comes back to its size; softer while wet.",
        `Only where nothing moves. ${ROOM}`,
      ),
      E85: marginal("ours", "Not tested beyond 17 % ethanol in what we read.", STATED),
      methanol: marginal("ours", "Not tested in methanol in what we read.", STATED),
    },
  },
  EPDM: {
    title: "Ethylene-propylene rubber",
    fuels: {
      petrol: fails("rubberClass", "It swells grossly in petrol.", "Take FKM instead."),
      E10: fails("rubberClass", "It swells grossly in petrol.", "Take FKM instead."),
      E85: fails("rubberClass", "The petrol in E85 swells it grossly.", "Take FKM instead."),
      methanol: fails(
        "rubberClass",
        "It bears neat methanol, but the petrol that flushes the system, or one tank of it, ruins it.",
        "Take FKM of about 70 % fluorine, stated for methanol.",
      ),
    },
  },
};
