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
  const [{ MESSAGES }, { MessagePage }, { renderPage }, { assets }] = await Promise.all([
    import("@/components/messages.ts"),
    import("@/components/message_page.ts"),
    import("@/components/page.ts"),
    import("./assets.ts"),
  ]);
  const message = { ...MESSAGES[kind], ...own };
  return renderPage({
    title: message.title,
    stylesheet: assets.style.path,
    icon: assets.icon.path,
    children: MessagePage(message),
  });
}
