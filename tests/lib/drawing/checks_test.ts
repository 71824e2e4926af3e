import { runChecks } from "../../helpers/checks.ts";
import { checks } from "./checks.ts";

runChecks(checks);
