/** Liners of hose and tube against fuel. */
import { type AgainstFuel, fails, marginal, meets } from "./against_fuel.ts";

/** What the inside of a hose or tube is made of. */
export type Liner = "PTFE" | "FKM" | "NBR" | "PA12";

const INERT = "No fuel attacks it, and little passes through.";
const CONDUCTIVE = "Take the conductive kind (black): flowing fuel charges the other.";
const STATED =
  "Only hose whose maker states this fuel; look at it yearly and renew it when it stiffens.";

/** Liners of hose and tube. */
export const LINERS: Readonly<Record<Liner, AgainstFuel>> = {
  PTFE: {
    title: "PTFE-lined hose",
    fuels: {
      petrol: meets("trade", INERT, CONDUCTIVE),
      E10: meets("trade", INERT, CONDUCTIVE),
      E85: meets("e85Guide", INERT, CONDUCTIVE),
      methanol: meets("trade", INERT, CONDUCTIVE),
    },
  },
  FKM: {
    title: "Rubber hose with a liner of fluorocarbon rubber",
    fuels: {
      petrol: meets("ornl", "It swells least of the common fuel rubbers."),
      E10: meets("ornl", "Alcohol adds to the swell, which stays moderate."),
      E85: meets("e85Guide", "Named among the resistant ones.", "Only hose marked for E85."),
      methanol: fails(
        "methanolBulletin",
        "General grades swell strongly in neat methanol.",
        "Take PTFE-lined hose.",
      ),
    },
  },
  NBR: {
    title: "Nitrile rubber hose",
    fuels: {
      petrol: meets(
        "ornl",
        "Usable: it swells, and shrinks and hardens when dried.",
        "Only hose rated for injection pressure; renew it when the system has stood dry.",
      ),
      E10: marginal("ornl", "Alcohol adds to the swell, and it embrittles when dried.", STATED),
      E85: marginal(
        "e85Guide",
        "Called resistant as a rubber; the trade finds that hoses harden and weep.",
        `${STATED} PTFE-lined hose is better.`,
      ),
      methanol: marginal(
        "methanolBulletin",
        "It depends on the grade.",
        `${STATED} PTFE-lined hose is better.`,
      ),
    },
  },
  PA12: {
    title: "Tube of polyamide 12",
    fuels: {
      petrol: meets(
        "polyamide",
        "The most used plastic for fuel lines.",
        "Allow for some growth in length.",
      ),
      E10: meets(
        "polyamide",
        "It swells, mostly in length, but least of the polyamides.",
        "Leave slack between clips for growth in length.",
      ),
      E85: marginal(
        "e85Guide",
        "Polyamide is named among what degrades; alcohol also passes through.",
        "Take tube with a barrier layer whose maker states E85, or PTFE-lined hose.",
      ),
      methanol: marginal(
        "polyamide",
        "Alcohol fuels are why tube with barrier layers was made.",
        "Take tube with a barrier layer whose maker states methanol, or PTFE-lined hose.",
      ),
    },
  },
};
