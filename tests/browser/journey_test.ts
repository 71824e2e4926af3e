/** The way of a builder who has never seen the tool: blank page to printed list and link. */
import { assert, assertEquals, assertMatch, assertStringIncludes } from "@std/assert";
import { it } from "@std/testing/bdd";
import { axeProblems, describeSite, printed } from "./open.ts";

/** The eight answers, as somebody would type them. */
const ANSWERS: [box: string, text: string][] = [
  ["engine.cylinders", "4"],
  ["engine.power", "313kW"],
  ["engine.powerSpeed", "7000"],
  ["engine.boost", "17.5 psi"],
  ["injectors.stages.0.flow", "1000 cc/min"],
  ["injectors.stages.0.pressure", "43.5 psi"],
  ["pump.points.0.flow", "340 L/h"],
  ["pump.points.0.pressure", "5 bar"],
  ["rail.bore", "5/8 in"],
  ["rail.height", "1 1/4 in"],
];

const CHOICES: [box: string, value: string][] = [
  ["engine.cycle", "four-stroke"],
  ["engine.aspiration", "boosted"],
  ["fuel.name", "E85"],
];

/** What the browser notes in its console when a form comes back. */
const REFUSED = /status of 422/;

const box = (path: string): string => `[id="${path}"]`;

describeSite("a builder with eight answers", (site) => {
  it("gets from the blank page to verdicts, a drill list, a printed checklist and a link", async () => {
    const { page } = site;
    await page.goto(site.url);
    for (const [path, value] of CHOICES) await page.selectOption(box(path), value);
    for (const [path, text] of ANSWERS) await page.fill(box(path), text);
    await page.click("button.main");
    await page.waitForURL(/\/p\/1\.[\w-]+\/size/);

    const checks = await page.textContent(".checks") ?? "";
    for (
      const title of [
        "Injector duty at the power peak",
        "Pump flow beyond the need",
        "Steady flow spread",
      ]
    ) {
      assertStringIncludes(checks, title);
    }
    assertEquals(await page.inputValue(box("engine.power")), "313kW");

    await page.click("nav.steps a[href$='/drill']");
    const drill = await page.textContent("main") ?? "";
    assertStringIncludes(drill, "M10x1");
    assertMatch(drill, /Tapping drill\s*9\.00 mm/);

    await page.click("nav.steps a[href$='/prove']");
    const prove = await page.textContent("main") ?? "";
    assertStringIncludes(prove, "Rung 1");
    assertStringIncludes(prove, "Walk-round lists");
    assert(await page.locator(".tick-box").count() > 40, "boxes to tick");
    for (const format of ["A4", "Letter"] as const) {
      const { sheets } = await printed(page, format);
      assert(sheets >= 4 && sheets <= 30, `${sheets} sheets of ${format}`);
    }

    await page.click("nav.steps a[href$='/hand-over']");
    const link = await page.inputValue("#link");
    const tuner = await site.freshPage();
    await tuner.goto(link);
    assertEquals(await tuner.inputValue(box("injectors.stages.0.flow")), "1000 cc/min");
    assertEquals(
      (await tuner.textContent(".checks"))?.replaceAll(/\s+/g, " "),
      checks.replaceAll(/\s+/g, " "),
    );
  });

  it("is told at the box what can't be taken, and loses nothing", async () => {
    const { page } = site;
    await page.goto(site.url);
    for (const [path, value] of CHOICES) await page.selectOption(box(path), value);
    for (const [path, text] of ANSWERS) await page.fill(box(path), text);
    await page.fill(box("engine.power"), "420");
    site.tolerate(REFUSED);
    await page.click("button.main");
    assertMatch(await page.title(), /^Error: /);
    assertEquals(await page.inputValue(box("engine.power")), "420");
    assertEquals(await page.inputValue(box("rail.bore")), "5/8 in");
    assertEquals(await page.getAttribute(box("engine.power"), "aria-invalid"), "true");
    await page.click("a[href='#engine.power']");
    assertEquals(await page.evaluate("document.activeElement.id"), "engine.power");
    assertEquals(await axeProblems(page), []);
  });

  it("sees what is not covered refused with the reason", async () => {
    const { page } = site;
    await page.goto(site.url);
    for (const [path, value] of CHOICES) await page.selectOption(box(path), value);
    for (const [path, text] of ANSWERS) await page.fill(box(path), text);
    await page.selectOption(box("fuel.name"), "diesel");
    site.tolerate(REFUSED);
    await page.click("button.main");
    assertStringIncludes(await page.textContent(".field-fault") ?? "", "diesel is injected");
  });

  it("finds each sheet of a demo fit for a screen reader, a phone and paper", async () => {
    const { page } = site;
    await page.goto(`${site.url}/demo/twin-rotor-staged`);
    const path = page.url().replace(/\/size$/, "");
    for (const sheet of ["size", "drill", "prove", "hand-over", "working"]) {
      await page.goto(`${path}/${sheet}`);
      assertEquals(await axeProblems(page), [], sheet);
      await page.setViewportSize({ width: 360, height: 740 });
      const wide = await page.evaluate("document.documentElement.scrollWidth");
      assert(Number(wide) <= 360, `${sheet} is ${wide} px wide on a phone`);
      await page.setViewportSize({ width: 1280, height: 800 });
    }
  });

  it("works without JavaScript", async () => {
    const browser = site.page.context().browser();
    const context = await browser?.newContext({ javaScriptEnabled: false });
    const page = await context?.newPage();
    assert(page);
    await page.goto(`${site.url}/demo/tourer-six-e10`);
    await page.fill(box("engine.power"), "200 hp");
    await page.click("button.main >> nth=0");
    await page.waitForURL(/\/size/);
    assertEquals(await page.inputValue(box("engine.power")), "200 hp");
    await context?.close();
  });
});
