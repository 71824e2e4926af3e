/**
 * The service in a browser: one server, one browser and one page for a whole file
 * of tests, as a new page costs several times what a visit does.
 *
 * @module
 */
import { assertEquals } from "@std/assert";
import { afterAll, afterEach, beforeAll, beforeEach, describe } from "@std/testing/bdd";
import axe from "axe-core";
import { type Browser, type BrowserContext, chromium, type Page } from "playwright-core";
import { type AppOptions, createApp } from "@/routes/app.ts";
import { unitsReady } from "@/lib/units/mod.ts";
import { launchOptions } from "./browser.ts";

/** What the tests of one file share. */
export interface Site {
  /** Where the service listens, without a slash at the end. */
  readonly url: string;
  /** The page, kept from test to test; what it complains of fails the test. */
  readonly page: Page;
  /** Opens a page as somebody else's browser would: nothing stored, nothing cached. It is watched too, and closed after the test. */
  freshPage(): Promise<Page>;
  /** Lets pages of this test complain of what the pattern matches, early or late: a page answered 422, say. */
  tolerate(pattern: RegExp): void;
  /** What pages complained of up to now; a test that means to provoke it takes it away by this. */
  complaints(): string[];
}

/**
 * Groups tests of the service in a browser. Each test fails when a page it
 * opened wrote an error to its console, threw, or was refused something.
 *
 * @param name The group.
 * @param tests Registers the tests, as in `describe`. The site is there once they run.
 * @param options What the service is told.
 */
export function describeSite(
  name: string,
  tests: (site: Site) => void,
  options: AppOptions = {},
): void {
  // A hung page must not hang the run.
  describe(name, { timeout: 60_000 }, () => {
    const problems: string[] = [];
    const tolerated: RegExp[] = [];
    const guests: BrowserContext[] = [];
    let server: Deno.HttpServer<Deno.NetAddr>;
    let browser: Browser;
    let page: Page;

    const watched = (page: Page): Page => {
      page.setDefaultTimeout(10_000);
      page.on("console", (message) => {
        if (message.type() === "error") problems.push(message.text());
      });
      page.on("pageerror", (error) => problems.push(String(error)));
      return page;
    };

    beforeAll(async () => {
      await unitsReady();
      const app = createApp(options);
      server = Deno.serve({ port: 0, hostname: "127.0.0.1", onListen() {} }, app.fetch);
      // With its own handler, playwright would keep a run alive that is told to end.
      browser = await chromium.launch({ ...await launchOptions(), handleSIGTERM: false });
      page = watched(await browser.newPage());
    });
    afterAll(async () => {
      await browser?.close();
      await server?.shutdown();
    });
    beforeEach(() => {
      problems.length = 0;
      tolerated.length = 0;
    });
    afterEach(async () => {
      for (const guest of guests.splice(0)) await guest.close();
      const unexpected = problems.filter((said) => !tolerated.some((each) => each.test(said)));
      assertEquals(unexpected, [], "what the page complained of");
    });

    tests({
      get url() {
        return `http://127.0.0.1:${server.addr.port}`;
      },
      get page() {
        return page;
      },
      async freshPage() {
        const context = await browser.newContext();
        guests.push(context);
        return watched(await context.newPage());
      },
      tolerate: (pattern) => void tolerated.push(pattern),
      complaints: () => problems.splice(0),
    });
  });
}

/** What axe objects to on a page as it stands: rule and place of each. */
export async function axeProblems(page: Page): Promise<string[]> {
  // page.addScriptTag would be refused by the page's own policy; evaluate is not.
  await page.evaluate(axe.source);
  const results = await page.evaluate(
    `axe.run({ resultTypes: ["violations"] })`,
  ) as axe.AxeResults;
  return results.violations.flatMap(({ id, nodes }) =>
    nodes.map((node) => `${id}: ${node.target.join(" ")}`)
  );
}

/** The page as it would be printed: the bytes of a PDF and the number of its sheets. */
export async function printed(
  page: Page,
  format: "A4" | "Letter" = "A4",
): Promise<{ bytes: Uint8Array; sheets: number }> {
  const bytes = await page.pdf({ format });
  const sheets = new TextDecoder("latin1").decode(bytes).match(/\/Type\s*\/Page\b/g)?.length ?? 0;
  return { bytes, sheets };
}
