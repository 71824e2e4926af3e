/** Makes a page that says what went wrong and what to do. */
import type { MessageKind } from "@/components/messages.ts";
import type { MessagePageProps } from "@/components/message_page.ts";

/**
 * Gives the page as text.
 *
 * @param kind What went wrong.
 * @param own Words of its own that take the place of the usual ones.
 */
export async function messagePage(
  kind: MessageKind,
  own: Partial<MessagePageProps> = {},
): Promise<string> {
  const [{ MESSAGES }, { MessagePage }, { page }] = await Promise.all([
    import("@/components/messages.ts"),
    import("@/components/message_page.ts"),
    import("./page.ts"),
  ]);
  const message = { ...MESSAGES[kind], ...own };
  return page({ title: message.title, children: MessagePage(message) });
}
