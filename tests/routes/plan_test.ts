import { assert, assertEquals, assertMatch, assertStringIncludes } from "@std/assert";
import fc from "fast-check";
import { packPlan } from "@/lib/plan/mod.ts";
import { createApp } from "@/routes/app.ts";
import { demos } from "@/routes/demos.ts";
import { UNFIT_TEXT } from "../helpers/finite.ts";

const app = createApp({ rate: { burst: 1e9, perSecond: 1e9 } });
const ORIGIN = { origin: "http://localhost" };

const LEAST = {
  "engine.cycle": "four-stroke",
  "engine.cylinders": "4",
  "engine.power": "300 hp",
  "engine.powerSpeed": "7000 rpm",
  "engine.aspiration": "natural",
  "fuel.name": "petrol",
};

async function send(boxes: Record<string, string>): Promise<Response> {
  return await app.request("http://localhost/plan", {
    method: "POST",
    headers: ORIGIN,
    body: new URLSearchParams(boxes),
  });
}

async function text(path: string, status = 200): Promise<string> {
  const answer = await app.request(`http://localhost${path}`);
  assertEquals(answer.status, status, path);
  return await answer.text();
}

/** The page's words, without its markup. */
function words(page: string): string {
  return page.replaceAll(/<[^>]*>/g, " ");
}

Deno.test("the start page asks the eight questions and lists the demos", async () => {
  const page = await text("/");
  for (const name of Object.keys(LEAST)) assertStringIncludes(page, `name="${name}"`);
  for (const { name } of demos) assertStringIncludes(page, `/demo/${name}`);
});

Deno.test("a form leads to the plan's own address, and the plan reads back as typed", async () => {
  const answer = await send(LEAST);
  assertEquals(answer.status, 303);
  const path = answer.headers.get("location") ?? "";
  assertMatch(path, /^\/p\/1\.[\w-]+\/size$/);
  const page = await text(path);
  assertStringIncludes(page, 'value="300 hp"');
  assertStringIncludes(page, "Injector duty at the power peak");
});

Deno.test("bad answers are shown at their boxes, nothing typed is lost", async () => {
  const answer = await send({ ...LEAST, "engine.power": "lots <b>", "rail.bore": "5 psi" });
  assertEquals(answer.status, 422);
  const page = await answer.text();
  assertStringIncludes(page, 'value="lots &lt;b>"');
  assertStringIncludes(page, 'value="5 psi"');
  assertStringIncludes(page, 'href="#engine.power"');
  assertStringIncludes(page, 'href="#rail.bore"');
  assertStringIncludes(page, 'value="7000 rpm"');
});

Deno.test("the address that forms are sent to leads to the start when it is opened", async () => {
  const answer = await app.request("http://localhost/plan");
  assertEquals([answer.status, answer.headers.get("location")], [302, "/"]);
});

Deno.test("what was converted or is not used stands beside the numbers", async () => {
  const answer = await send({
    ...LEAST,
    "injectors.stages.0.flow": "95 lb/h",
    "engine.boost": "17 psi",
  });
  const path = answer.headers.get("location") ?? "";
  const size = words(await text(path)).replaceAll(/\s+/g, " ");
  assertStringIncludes(size, "from 95 lb/h by mass");
  assertStringIncludes(size, "with a density of 683.8 kg/m³");
  assertStringIncludes(size, "Highest boost : not used: the engine is said to be naturally");
  const handOver = words(await text(path.replace(/size$/, "hand-over")));
  assertStringIncludes(handOver, "with a density of 683.8 kg/m³");
});

Deno.test("the working opens all its steps when asked", async () => {
  const answer = await send(LEAST);
  const path = (answer.headers.get("location") ?? "").replace(/size$/, "working");
  const open = (page: string): number => page.match(/<details[^>]* open\b/g)?.length ?? 0;
  const steps = (await text(path)).match(/<details/g)?.length ?? 0;
  assert(steps > 30, `${steps} steps`);
  assertEquals([open(await text(path)), open(await text(`${path}?open=all`))], [0, steps]);
});

Deno.test("direct injection, diesel and gas are refused with the reason", async () => {
  for (
    const [box, value, says] of [
      ["fuel.name", "diesel", "hundreds of bar"],
      ["fuel.name", "gas", "pressure vessels"],
      ["engine.injection", "direct", "50 bar"],
    ] as const
  ) {
    const answer = await send({ ...LEAST, [box]: value });
    assertEquals(answer.status, 422);
    assertStringIncludes(await answer.text(), says);
  }
});

Deno.test("confirming an assumption writes its value into the plan", async () => {
  const first = await send(LEAST);
  const before = await text(first.headers.get("location") ?? "");
  const answer = await send({ ...LEAST, confirm: "regulator.setPressure" });
  const after = await text((answer.headers.get("location") ?? "").split("#")[0] ?? "");
  const count = (page: string): number => Number(/Still assumed: (\d+)/.exec(words(page))?.[1]);
  assertEquals(count(after), count(before) - 1);
  assertStringIncludes(after, 'value="3 bar"');
});

for (const { name, plan } of demos) {
  Deno.test(`demo ${name} opens, and each of its sheets is whole`, async () => {
    const answer = await app.request(`http://localhost/demo/${name}`);
    assertEquals(answer.status, 303);
    const path = (answer.headers.get("location") ?? "").replace(/\/size$/, "");
    assertEquals(path, `/p/${await packPlan(plan)}`);
    const beside = ["working", "shopping", "workshop", "blends", "changes"];
    for (const sheet of ["size", "drill", "prove", "hand-over", ...beside]) {
      const page = await text(`${path}/${sheet}`);
      const said = words(page);
      assert(!UNFIT_TEXT.test(said), `${sheet}: ${UNFIT_TEXT.exec(said)?.[0]}`);
      assert(!/\bsafe\b/i.test(said), `${sheet} says safe`);
      assert(!/ (?:style|on\w+)="/.test(page), `${sheet} has inline style or script`);
      assertStringIncludes(page, "title-block");
    }
  });
}

Deno.test("the shopping list comes as a file of comma-separated values, with its rows", async () => {
  const path = `/p/${await packPlan(demos[0]?.plan)}`;
  const answer = await app.request(`http://localhost${path}/shopping.csv`);
  assertEquals(answer.status, 200);
  assertMatch(answer.headers.get("content-type") ?? "", /^text\/csv; charset=utf-8/);
  assertMatch(answer.headers.get("content-disposition") ?? "", /^attachment; filename="[\w.-]+"$/);
  const rows = (await answer.text()).split("\r\n");
  assert(rows.length > 20, `${rows.length} rows`);
  assert(rows.some((row) => row.includes("pump")), rows.join("\n"));
  await text("/p/hello/shopping.csv", 400);
});

Deno.test("a check that fails or is marginal leads to what would do about it", async () => {
  const plan = { ...demos[0]?.plan as object, wiring: { wire: "0.75 mm2", outLength: "6 m" } };
  const path = `/p/${await packPlan(plan)}`;
  assertStringIncludes(await text(`${path}/size`), `${path}/changes#change-wire-loss`);
  const page = await text(`${path}/changes`);
  assertStringIncludes(page, 'id="change-wire-loss"');
  assertMatch(words(page).replaceAll(/\s+/g, " "), /0\.75 mm² → .* mm²/);
});

Deno.test("confirming an assumed run writes its pieces into the plan", async () => {
  const answer = await send({ ...LEAST, confirm: "supply.feed" });
  const page = await text((answer.headers.get("location") ?? "").split("#")[0] ?? "");
  assertMatch(page, /<option value="hose" selected/);
  assertStringIncludes(page, 'value="3.5 m"');
});

/** A feed of two pieces. */
const FEED = {
  ...LEAST,
  "supply.feed.0.piece": "hose",
  "supply.feed.0.length": "1 m",
  "supply.feed.1.piece": "straight",
};

/** The pieces in the boxes of a page, blank rows as "". */
function pieces(page: string): string[] {
  return [...page.matchAll(/<select id="supply\.feed\.\d+\.piece"[^]*?<\/select>/g)]
    .map(([select]) => /<option value="([^"]+)" selected/.exec(select)?.[1] ?? "");
}

Deno.test("buttons of the form lead back to where they stand, opened", async () => {
  const to = async (pressed: Record<string, string>): Promise<string> =>
    ((await send({ ...FEED, ...pressed })).headers.get("location") ?? "").replace(/^.*\/size/, "");
  assertEquals(await to({}), "");
  assertEquals(await to({ confirm: "rail.pitch" }), "#assumed");
  assertEquals(await to({ settle: "rail.pitch" }), "?open=rail#rail.pitch");
  assertEquals(await to({ stay: "wiring" }), "?open=wiring#section-wiring");
  assertEquals(await to({ remove: "supply.feed.0" }), "?open=supply#supply.feed.0");
  assertEquals(await to({ insert: "supply.feed.1" }), "?blank=supply.feed.1#supply.feed.1");
  assertEquals(await to({ more: "supply.feed" }), "?more=supply.feed#supply.feed");
  const nowhere = [{ more: "engine.power" }, { stay: "constructor" }, { insert: "pump.points.1" }, {
    insert: "supply.feed.99",
  }];
  for (const pressed of [...nowhere, { remove: "x.y\r\nz" }]) assertEquals(await to(pressed), "");
  assertEquals(await to({ settle: "rail.<b>" }), "?open=rail#section-rail");
  const opened = await text(`/p/${await packPlan(demos[0]?.plan)}/size?open=wiring`);
  assertMatch(opened, /id="section-wiring" open/);
  assert(!/id="section-engine" open/.test(opened));
});

Deno.test("a blank row stands where it was inserted, a removed one is gone", async () => {
  const after = async (boxes: Record<string, string>): Promise<string[]> => {
    const answer = await send(boxes);
    assertEquals(answer.status, 303);
    return pieces(await text((answer.headers.get("location") ?? "").split("#")[0] ?? ""));
  };
  assertEquals(await after(FEED), ["hose", "straight", ""]);
  assertEquals(await after({ ...FEED, remove: "supply.feed.0" }), ["straight", ""]);
  assertEquals(
    await after({ ...FEED, insert: "supply.feed.1" }),
    ["hose", "", "straight", ""],
  );
  const more = await after({ ...FEED, more: "supply.feed" });
  assertEquals(more, ["hose", "straight", ...Array(6).fill("")]);
  // What was typed into rows further down counts as moved up over the blank ones.
  const gap = { ...FEED, "supply.feed.4.piece": "barb", insert: "supply.feed.4" };
  assertEquals(await after(gap), ["hose", "straight", "", "barb", ""]);
});

Deno.test("a fault stays at its box when a blank row is inserted above it", async () => {
  const answer = await send({
    ...FEED,
    "sheet.units": "metric",
    "supply.feed.0.length": "-1 m",
    insert: "supply.feed.0",
  });
  assertEquals(answer.status, 422);
  const page = await answer.text();
  assertEquals(pieces(page).slice(0, 3), ["", "hose", "straight"]);
  assertStringIncludes(page, 'id="supply.feed.1.length-fault"');
  assertStringIncludes(page, 'href="#supply.feed.1.length"');
});

Deno.test("links that hold no plan say so and what to do", async () => {
  const [demo] = demos;
  const code = await packPlan(demo?.plan);
  const cases: [string, string][] = [
    [code.slice(0, -20), "cut off"],
    [code.slice(0, 30) + (code[30] === "A" ? "B" : "A") + code.slice(31), "changed on its way"],
    [`9${code.slice(1)}`, "version"],
    ["1." + "A".repeat(9000), "too long"],
    [await packPlan({ version: 2 }), "version"],
    [await packPlan({ hello: 1 }), "no plan"],
    ["hello", ""],
  ];
  for (const [broken, says] of cases) {
    const page = await text(`/p/${broken}/size`, 400);
    assertStringIncludes(words(page), says);
    assert(!UNFIT_TEXT.test(words(page)));
  }
});

Deno.test("any text in any box gives a page, never a fault of the service", async () => {
  const names = [
    ...Object.keys(LEAST),
    "rail.bore",
    "injectors.stages.0.flow",
    "pump.points.2.flow",
    "confirm",
  ];
  await fc.assert(
    fc.asyncProperty(
      fc.constantFrom(...names),
      fc.oneof(
        fc.string({ unit: "grapheme" }),
        fc.constantFrom("1e999 bar", "-0", "__proto__", "3 bar 4", "½ in"),
      ),
      async (name, typed) => {
        const answer = await send({ ...LEAST, [name]: typed });
        assert([303, 422].includes(answer.status), `${answer.status} for ${name} = ${typed}`);
        if (answer.status === 422) {
          assert(!UNFIT_TEXT.test(words(await answer.text()).replaceAll(typed, "")));
        }
      },
    ),
    { numRuns: 150, seed: 6 },
  );
});

Deno.test("an address of no sheet is not found", async () => {
  const code = await packPlan(demos[0]?.plan);
  await text(`/p/${code}/nothing`, 404);
  await text("/demo/nothing", 404);
  await text("/methods/nothing", 404);
});

Deno.test("the method book has a page for each method, with its formula", async () => {
  const index = await text("/methods");
  const paths = [...index.matchAll(/href="(\/methods\/[a-z0-9-]+)"/g)].map(([, path]) =>
    path ?? ""
  );
  assert(paths.length > 60, `${paths.length} methods`);
  for (const path of paths) {
    const page = await text(path);
    assert(page.includes("<math") || page.includes("formula"), path);
    assert(!/ style="/.test(page), path);
  }
});
