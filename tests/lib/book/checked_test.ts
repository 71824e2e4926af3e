/** No method stands without a check against something outside the project. */
import { assert, assertEquals } from "@std/assert";
import { BOOK } from "@/lib/book/mod.ts";
import type { Check } from "../../helpers/checks.ts";
import { checks as engine } from "../engine/checks.ts";
import { checks as flow } from "../flow/checks.ts";
import { checks as fuel } from "../fuel/checks.ts";
import { checks as injector } from "../injector/checks.ts";
import { checks as inspect } from "../inspect/checks.ts";
import { checks as layout } from "../layout/checks.ts";
import { checks as line } from "../line/checks.ts";
import { checks as proof } from "../proof/checks.ts";
import { checks as rail } from "../rail/checks.ts";
import { checks as seal } from "../seal/checks.ts";
import { checks as sensor } from "../sensor/checks.ts";
import { checks as strength } from "../strength/checks.ts";
import { checks as supply } from "../supply/checks.ts";
import { checks as thread } from "../thread/checks.ts";
import { checks as walkround } from "../walkround/checks.ts";
import { checks as wiring } from "../wiring/checks.ts";

const CHECKS: readonly Check[] = [
  engine,
  flow,
  fuel,
  injector,
  inspect,
  layout,
  line,
  proof,
  rail,
  seal,
  sensor,
  strength,
  supply,
  thread,
  walkround,
  wiring,
].flat();

for (const { title, methods } of BOOK) {
  Deno.test(`${title}: every method has a check against the outside`, () => {
    const checked = new Set(
      CHECKS.filter((c) => c.provenance !== "formula-evaluated").flatMap((c) => c.methods),
    );
    assertEquals(methods.filter((m) => !checked.has(m)).map((m) => m.id), []);
  });
}

Deno.test("every check names its source", () => {
  for (const check of CHECKS) assert(check.source.trim().length > 3, check.name);
});

Deno.test("the book holds the rooms' methods", () => {
  for (const { id, methods } of BOOK) assert(methods.length > 0, `${id} exports no method`);
});
