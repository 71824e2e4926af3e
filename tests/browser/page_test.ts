import { assertEquals, assertMatch } from "@std/assert";
import { it } from "@std/testing/bdd";
import { axeProblems, describeSite, printed } from "./open.ts";

describeSite("the service in a browser", (site) => {
  it("says that it runs", async () => {
    const answer = await site.page.goto(`${site.url}/healthz`);
    assertEquals((await answer?.json()).status, "ok");
  });

  it("has a start page that axe finds nothing wrong with", async () => {
    await site.page.goto(site.url);
    assertMatch(await site.page.title(), /Dryrail/);
    assertEquals(await axeProblems(site.page), []);
  });

  it("prints", async () => {
    await site.page.goto(site.url);
    const { bytes, sheets } = await printed(site.page);
    assertEquals(new TextDecoder().decode(bytes.subarray(0, 5)), "%PDF-");
    assertEquals(sheets > 0, true);
  });

  it("lets no page run or style anything inline", async () => {
    await site.page.goto(site.url);
    const found = await site.page.evaluate(`(() => {
      const box = document.createElement("div");
      box.innerHTML = '<p style="font-weight: 900">a</p>';
      const script = document.createElement("script");
      script.textContent = "window.ranInline = true";
      document.body.append(box, script);
      return [getComputedStyle(box.firstChild).fontWeight, window.ranInline];
    })()`);
    assertEquals(found, ["400", undefined]);
    const [style, script, ...more] = site.complaints();
    assertMatch(style ?? "", /inline style violates .* Content Security Policy/);
    assertMatch(script ?? "", /inline script violates .* Content Security Policy/);
    assertEquals(more, []);
  });

  it("opens a clean browser beside it", async () => {
    await site.page.context().addCookies([{ name: "a", value: "1", url: site.url }]);
    const guest = await site.freshPage();
    await guest.goto(site.url);
    assertEquals(await guest.context().cookies(), []);
    await site.page.context().clearCookies();
  });
});
