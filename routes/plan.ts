/**
 * POST /plan: takes a form and leads to the plan's own address.
 * GET /p/:code/:sheet: the sheets of the plan that the address holds.
 *
 * The plan stands whole in the address; nothing is stored. What pages are made with is
 * loaded when the first is asked for, so that the service starts quickly.
 */
import type { Context, Hono } from "hono";
import type { Boxes, Plan } from "@/lib/plan/mod.ts";
import type { AppEnv } from "./env.ts";
import { messagePage } from "./message.ts";
import type { SheetName } from "./plan_pages.ts";

/** The sheets by the last part of their address. */
const SHEETS: readonly string[] = [
  "size",
  "drill",
  "prove",
  "hand-over",
  "working",
  "shopping",
  "workshop",
  "blends",
  "changes",
  "drawing",
] satisfies SheetName[];

/** Adds both. */
export function addPlan(app: Hono<AppEnv>): void {
  app.post("/plan", takeForm);
  // Where someone lands who opens again the address that the form was sent to.
  app.get("/plan", (c) => c.redirect("/", 302));
  app.get("/p/:code", (c) => c.redirect(`/p/${c.req.param("code")}/size`, 302));
  app.get("/p/:code/shopping.csv", sendShopping);
  app.get("/p/:code/rail.dxf", sendDxf);
  app.get("/p/:code/:sheet", showSheet);
}

/** Reads a form; sends on to the plan, or shows the form again with what can't be taken. */
async function takeForm(c: Context): Promise<Response> {
  const [{ packPlan }, { takeBoxes, tooLong }] = await Promise.all([
    import("@/lib/plan/mod.ts"),
    import("./take_form.ts"),
  ]);
  const boxes = boxesFrom(await c.req.formData());
  const taken = await takeBoxes(boxes);
  if ("page" in taken) return c.html(taken.page, 422);
  try {
    return c.redirect(`/p/${await packPlan(taken.plan)}/size${taken.place}`, 303);
  } catch (error) {
    if (!(error instanceof RangeError)) throw error;
    return c.html(await tooLong(boxes), 422);
  }
}

/** The text of every box; files and repeated names are no part of a plan. */
function boxesFrom(form: FormData): Boxes {
  const boxes = new Map<string, string>();
  for (const [name, value] of form) if (typeof value === "string") boxes.set(name, value);
  return boxes;
}

async function showSheet(c: Context): Promise<Response> {
  const sheet = c.req.param("sheet") ?? "";
  if (!SHEETS.includes(sheet)) return c.notFound() as Response;
  const code = c.req.param("code") ?? "";
  const opened = await openPlan(code);
  if ("problem" in opened) return c.html(await messagePage(opened.problem), 400);
  const pages = await import("./plan_pages.ts");
  const open = c.req.query("open");
  const at = {
    plan: opened.plan,
    code,
    link: new URL(`/p/${code}/size`, c.req.url).href,
    isOpen: open === "all",
    open,
    blank: c.req.query("blank"),
    more: c.req.query("more"),
    paper: c.req.query("paper"),
  };
  return c.html(await pages.sheetPage(sheet as SheetName, at));
}

/** The shopping list for a spreadsheet. */
async function sendShopping(c: Context): Promise<Response> {
  const opened = await openPlan(c.req.param("code") ?? "");
  if ("problem" in opened) return c.html(await messagePage(opened.problem), 400);
  const { shoppingSheet } = await import("./plan_pages.ts");
  return c.body(await shoppingSheet(opened.plan), 200, {
    "content-type": "text/csv; charset=utf-8; header=present",
    "content-disposition": 'attachment; filename="shopping.csv"',
  });
}

/** The rail for a machine. */
async function sendDxf(c: Context): Promise<Response> {
  const code = c.req.param("code") ?? "";
  const opened = await openPlan(code);
  if ("problem" in opened) return c.html(await messagePage(opened.problem), 400);
  const { railDxf } = await import("./plan_pages.ts");
  const file = await railDxf({ plan: opened.plan, code, link: c.req.url });
  if (file === undefined) return c.redirect(`/p/${code}/drawing`, 302);
  return c.body(file, 200, {
    "content-type": "image/vnd.dxf; charset=utf-8",
    "content-disposition": 'attachment; filename="rail.dxf"',
  });
}

type Opened =
  | { readonly plan: Plan }
  | { readonly problem: Parameters<typeof messagePage>[0] };

/** The plan that an address holds, or why it holds none. */
async function openPlan(code: string): Promise<Opened> {
  const [{ unpackPlan }, { read }] = await Promise.all([
    import("@/lib/plan/mod.ts"),
    import("./read_plan.ts"),
  ]);
  const unpacked = await unpackPlan(code);
  if (!unpacked.ok) return { problem: unpacked.reason };
  const reading = await read(unpacked.plan);
  if (reading.ok) return { plan: reading.plan };
  const newer = reading.faults.some(({ path }) => path === "version");
  return { problem: newer ? "unknown-version" : "no-plan" };
}
