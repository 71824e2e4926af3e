import { chromium } from "playwright-core";
import { createApp } from "@/routes/app.ts";
import { unitsReady } from "@/lib/units/mod.ts";
import { launchOptions } from "./browser.ts";
await unitsReady();
const server = Deno.serve({ port: 0, hostname: "127.0.0.1", onListen() {} }, createApp({}).fetch);
const url = `http://127.0.0.1:${(server.addr as Deno.NetAddr).port}`;
const browser = await chromium.launch(await launchOptions());
const page = await browser.newPage();
page.on("console", (m) => { if (m.type() === "error") console.log("console:", m.text()); });
for (const job of Deno.args) {
  const [path = "", out = "", mode = "1280", selector] = job.split("|");
  await page.setViewportSize({ width: mode === "A4" ? 794 : Number(mode), height: 900 });
  await page.goto(url + path);
  if (mode === "A4" || mode === "Letter") await page.pdf({ path: `${out}.pdf`, format: mode, printBackground: false });
  else {
    // unroll scrolling columns
    await page.evaluate("document.querySelectorAll('.found').forEach((e) => { e.style.maxHeight = 'none'; e.style.overflow = 'visible'; e.style.position = 'static'; })");
    if (selector) await page.locator(selector).first().screenshot({ path: `${out}.png` }); else await page.screenshot({ path: `${out}.png`, fullPage: true });
  }
}
await browser.close();
await server.shutdown();
