/** What the thread room is held against. */
import { type Check, fromReference } from "../../helpers/checks.ts";
import { drillLists } from "./of_drill_lists.ts";
import { drilling } from "./of_drilling.ts";
import { loadCases } from "./of_load_cases.ts";
import { loads } from "./of_loads.ts";
import { nptDrills, pipeThreads } from "./of_pipe_threads.ts";
import { port } from "./of_port.ts";
import { ofPorts, ports } from "./of_ports.ts";
import { printed } from "./of_printed.ts";
import { screws } from "./of_screws.ts";
import { byGeometry } from "./of_shapes.ts";
import { speeds } from "./of_speeds.ts";
import { threads } from "./of_threads.ts";

/** All checks of the room. */
export const checks: Check[] = [
  ...fromReference("threads.json", threads),
  ...fromReference("pipe-threads.json", pipeThreads),
  ...fromReference("drilling.json", drilling),
  ...fromReference("sensor-port.json", port),
  ...fromReference("ports-hoses.json", ports),
  ...fromReference("thread-strength.json", loadCases),
  ...nptDrills,
  ...drillLists,
  ...byGeometry,
  ...loads,
  ...printed,
  ...screws,
  ...ofPorts,
  ...speeds,
];
