/** Where a page of a plan links to, to say what would mend a check. */
import { changesId } from "./changes_page.ts";

/** For the checks of a plan's sheets. */
export function changesHref(
  { planPath }: { readonly planPath: string },
): (checkId: string) => string {
  return (checkId) => `${planPath}/changes#${changesId(checkId)}`;
}
