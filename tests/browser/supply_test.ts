/** The supply in a browser: a run typed in piece by piece, and what its sheets say of it. */
import { assert, assertEquals, assertMatch, assertStringIncludes } from "@std/assert";
import { it } from "@std/testing/bdd";
import { axeProblems, describeSite, printed } from "./open.ts";

const box = (path: string): string => `[id="${path}"]`;

/** What the browser notes in its console when a form comes back. */
const REFUSED = /status of 422/;

const SHEETS = ["size", "shopping", "changes", "blends"] as const;

describeSite("a builder who lists his supply", (site) => {
  it("types a feed piece by piece, is told at the box what is wrong, and gets its pressures", async () => {
    const { page } = site;
    await page.goto(`${site.url}/demo/tourer-six-e10`);
    await page.evaluate("document.querySelectorAll('details').forEach((d) => { d.open = true; })");
    await page.selectOption(box("supply.feed.0.piece"), "filter");
    await page.fill(box("supply.feed.0.flow"), "40 gal/h");
    await page.fill(box("supply.feed.0.loss"), "");
    site.tolerate(REFUSED);
    await page.click("button.main >> nth=0");
    assertMatch(await page.title(), /^Error: /);
    // Half a stated loss is none: the fault stands at the half that is missing.
    assertEquals(await page.locator(box("supply.feed.0.loss-fault")).count(), 1);
    assertEquals(await page.inputValue(box("supply.feed.0.flow")), "40 gal/h");
    assertEquals(await axeProblems(page), []);

    await page.fill(box("supply.feed.2.length"), "-2 m");
    await page.click("button.main >> nth=0");
    const fault = await page.textContent(box("supply.feed.2.length-fault")) ?? "";
    assertStringIncludes(fault, "0 to 20 m");
    assertEquals(await page.inputValue(box("supply.feed.2.length")), "-2 m");

    await page.fill(box("supply.feed.2.length"), "2 m");
    await page.fill(box("supply.feed.0.loss"), "1.2 psi");
    await page.click("button.main >> nth=0");
    await page.waitForURL(/\/size/);
    const supply = await page.textContent("section[aria-labelledby=supply-title]") ?? "";
    assertStringIncludes(supply, "filter");
    assertStringIncludes(supply, "Cranking");
  });

  it("puts a piece between two, and takes one out, without JavaScript", async () => {
    const context = await site.page.context().browser()?.newContext({ javaScriptEnabled: false });
    const page = await context?.newPage();
    assert(page);
    await page.goto(`${site.url}/demo/tourer-six-e10`);
    await page.click("#section-supply > summary");
    const second = await page.inputValue(box("supply.feed.1.piece"));
    const third = await page.inputValue(box("supply.feed.2.length"));
    await page.click("button[name=insert][value='supply.feed.1']");
    // It comes back where it was, with what was there moved down.
    await page.waitForURL(/\?blank=supply\.feed\.1#supply\.feed\.1$/);
    assert(await page.locator(box("supply.feed.1.piece")).isVisible());
    assertEquals(await page.inputValue(box("supply.feed.1.piece")), "");
    assertEquals(await page.inputValue(box("supply.feed.2.piece")), second);
    assertEquals(await page.inputValue(box("supply.feed.3.length")), third);
    await page.selectOption(box("supply.feed.1.piece"), "elbow-90-forged");
    await page.click("button[name=stay][value=supply]");
    await page.waitForURL(/\?open=supply#section-supply$/);
    assertEquals(await page.inputValue(box("supply.feed.1.piece")), "elbow-90-forged");
    await page.click("button[name=remove][value='supply.feed.1']");
    await page.waitForURL(/#supply\.feed\.1$/);
    assertEquals(await page.inputValue(box("supply.feed.1.piece")), second);
    assertEquals(await page.inputValue(box("supply.feed.2.length")), third);
    await context?.close();
  });

  it("works the plan out on the return key, and confirms nothing by it", async () => {
    const { page } = site;
    await page.goto(`${site.url}/demo/tourer-six-e10`);
    const assumed = await page.textContent("#assumed");
    await page.fill(box("engine.power"), "205 hp");
    await page.press(box("engine.power"), "Enter");
    await page.waitForURL(/\/p\/1\.[\w-]+\/size$/);
    assertEquals(await page.inputValue(box("engine.power")), "205 hp");
    assertEquals(await page.textContent("#assumed"), assumed);
  });

  it("asks for a whole plan in a form fit for a screen reader and a phone", async () => {
    const { page } = site;
    await page.goto(`${site.url}/demo/twin-rotor-staged`);
    for (const width of [1280, 360]) {
      await page.setViewportSize({ width, height: 800 });
      await page.evaluate(
        "document.querySelectorAll('details').forEach((each) => { each.open = true; })",
      );
      assertEquals(await axeProblems(page), [], `${width} px`);
      const wide = await page.evaluate("document.documentElement.scrollWidth");
      assert(Number(wide) <= width, `${wide} px wide of ${width}`);
    }
    await page.setViewportSize({ width: 1280, height: 800 });
  });

  it("finds the sheets of the supply fit for a screen reader, a phone and paper", async () => {
    const { page } = site;
    await page.goto(`${site.url}/demo/hillclimb-four-e85`);
    const path = page.url().replace(/\/size$/, "");
    for (const sheet of SHEETS) {
      await page.goto(`${path}/${sheet}`);
      assertEquals(await axeProblems(page), [], sheet);
      await page.setViewportSize({ width: 360, height: 740 });
      const wide = await page.evaluate("document.documentElement.scrollWidth");
      assert(Number(wide) <= 360, `${sheet} is ${wide} px wide on a phone`);
      assertEquals(await axeProblems(page), [], `${sheet} on a phone`);
      await page.setViewportSize({ width: 1280, height: 800 });
      for (const format of ["A4", "Letter"] as const) {
        const { sheets } = await printed(page, format);
        assert(sheets >= 1 && sheets <= 12, `${sheet}: ${sheets} sheets of ${format}`);
      }
    }
  });
});
