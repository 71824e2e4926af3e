/** Puts content into a whole page, with the addresses of what every page loads. */
import { type PageProps, renderPage } from "@/components/page.ts";
import { assets } from "./assets.ts";

/** Gives the page as text. */
export function page(props: Omit<PageProps, "stylesheet" | "icon">): string {
  return renderPage({ stylesheet: assets.style.path, icon: assets.icon.path, ...props });
}
