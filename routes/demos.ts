/** The demo plans, as people would type them. Imported, so that no file is read at run time. */
import dragsterVeeMethanol from "@/seeds/dragster-vee-methanol.json" with { type: "json" };
import hillclimbFourE85 from "@/seeds/hillclimb-four-e85.json" with { type: "json" };
import tourerSixE10 from "@/seeds/tourer-six-e10.json" with { type: "json" };
import twinRotorStaged from "@/seeds/twin-rotor-staged.json" with { type: "json" };

/** One demo. */
export interface Demo {
  /** Its file's name without the ending; part of its address. */
  readonly name: string;
  /** The plan, as `POST /api/evaluate` takes it. */
  readonly plan: unknown;
}

/** All demos, in the order they are offered. */
export const demos: readonly Demo[] = [
  { name: "hillclimb-four-e85", plan: hillclimbFourE85 },
  { name: "tourer-six-e10", plan: tourerSixE10 },
  { name: "twin-rotor-staged", plan: twinRotorStaged },
  { name: "dragster-vee-methanol", plan: dragsterVeeMethanol },
];
