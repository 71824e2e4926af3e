/**
 * `deno task bench`: how costly the service is, as ratios of things measured in
 * the same run, so that they mean the same on any machine.
 *
 * @module
 */
import { coldStart } from "./cold_start.ts";

const { ours, bare } = await coldStart();
console.log(
  `cold start to first answer: ${ours.toFixed(0)} ms, ${(ours / bare).toFixed(2)} times the ` +
    `bare Hono app's ${bare.toFixed(0)} ms`,
);
