/** The workshop sheet on a phone, for a screen reader, and on the paper that goes to the press. */
import { assert, assertEquals, assertStringIncludes } from "@std/assert";
import { it } from "@std/testing/bdd";
import { axeProblems, describeSite, printed } from "./open.ts";

/** Sheets of paper that a builder takes along at most. */
const MOST_SHEETS = 12;

describeSite("a builder who goes to the drill press", (site) => {
  it("finds the workshop sheet from the Drill sheet, and a tool from the step that takes it", async () => {
    const { page } = site;
    await page.goto(`${site.url}/demo/hillclimb-four-e85`);
    await page.goto(page.url().replace(/\/size.*$/, "/drill"));
    await page.click("a[href$='/workshop']");
    await page.waitForURL(/\/workshop$/);
    assertStringIncludes(await page.textContent("h1") ?? "", "Workshop sheet");
    await page.click(".workshop-order a[href^='#tool-'] >> nth=0");
    await page.waitForURL(/#tool-/);
    const id = new URL(page.url()).hash.slice(1);
    assert(await page.locator(`[id="${id}"]`).isVisible());
  });

  for (const demo of ["hillclimb-four-e85", "tourer-six-e10"]) {
    it(`reads the sheet of ${demo} on a phone, and prints it on A4 and Letter`, async () => {
      const { page } = site;
      await page.goto(`${site.url}/demo/${demo}`);
      await page.goto(page.url().replace(/\/size.*$/, "/workshop"));
      assertEquals(await axeProblems(page), []);
      await page.setViewportSize({ width: 360, height: 740 });
      const wide = await page.evaluate("document.documentElement.scrollWidth");
      assert(Number(wide) <= 360, `${wide} px wide on a phone`);
      assertEquals(await axeProblems(page), [], "on a phone");
      await page.setViewportSize({ width: 1280, height: 800 });
      for (const format of ["A4", "Letter"] as const) {
        const { sheets } = await printed(page, format);
        assert(sheets >= 3 && sheets <= MOST_SHEETS, `${sheets} sheets of ${format}`);
      }
    });
  }
});
