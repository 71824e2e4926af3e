/** Makes the start page. */
import type { FormShown } from "@/components/plan_shown.ts";
import { StartPage } from "@/components/start_page.ts";
import { demosShown } from "./demos_shown.ts";
import { page } from "./page.ts";

/** Gives the page as text, blank or with what was typed and what of it can't be taken. */
export function startPage({ boxes, faults }: FormShown): string {
  return page({
    title: "Fuel systems for modified engines",
    hasErrors: faults.length > 0,
    children: StartPage({ boxes, faults, demos: demosShown() }),
  });
}
