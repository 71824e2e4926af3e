/** Makes the start page. */
import { renderPage } from "@/components/page.ts";
import type { FormShown } from "@/components/plan_shown.ts";
import { StartPage } from "@/components/start_page.ts";
import { assets } from "./assets.ts";
import { demosShown } from "./demos_shown.ts";

/** Gives the page as text, blank or with what was typed and what of it can't be taken. */
export function startPage({ boxes, faults }: FormShown): string {
  return renderPage({
    title: "Fuel systems for modified engines",
    stylesheet: assets.style.path,
    icon: assets.icon.path,
    hasErrors: faults.length > 0,
    children: StartPage({ boxes, faults, demos: demosShown() }),
  });
}
