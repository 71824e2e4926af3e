/** What the pages say when something can't be shown. */
import type { MessagePageProps } from "./message_page.ts";

/** What can go wrong. The first four are why a link gives no plan. */
export type MessageKind =
  | "cut-off"
  | "damaged"
  | "too-long"
  | "unknown-version"
  | "no-plan"
  | "not-found"
  | "too-large"
  | "too-many"
  | "internal";

const ASK_AGAIN =
  "Ask whoever sent it to copy the whole address again, and to send it in a message that does not break long lines.";

/** The words, by what went wrong. */
export const MESSAGES: Readonly<Record<MessageKind, MessagePageProps>> = {
  "cut-off": {
    title: "This link was cut off",
    detail:
      "A plan travels whole inside its link, and the end of this one is missing. Some mail programs and chats break long addresses.",
    todo: [
      "Copy the address from where it stands whole, up to its last character, and open that.",
      ASK_AGAIN,
    ],
  },
  damaged: {
    title: "This link was changed on its way",
    detail:
      "A plan travels inside its link with a checksum, and the two do not agree. A letter was changed, lost or added.",
    todo: [ASK_AGAIN, "Do not retype a link by hand: copy it."],
  },
  "too-long": {
    title: "This link is too long",
    detail: "Links hold up to 7500 characters; this one holds more than any plan needs.",
    todo: [
      "If you made it here, shorten remarks and names in the plan.",
      "If you were sent it, ask for it again: something else may have been pasted to it.",
    ],
  },
  "unknown-version": {
    title: "This link is of a version not known here",
    detail: "It was made by a newer Dryrail than this one.",
    todo: [
      "Open it where it was made.",
      "Ask whoever runs this service to bring it up to date.",
    ],
  },
  "no-plan": {
    title: "This link holds no plan",
    detail: "It can be read, but what it holds can't be taken as a plan.",
    todo: [ASK_AGAIN, "Start again from the eight questions."],
  },
  "not-found": {
    title: "There is nothing here",
    detail: "No page has this address. It may have been cut off or mistyped.",
    todo: ["Look at the end of the address: nothing should be missing."],
  },
  "too-large": {
    title: "This is too large",
    detail: "A plan takes a few kilobytes; what was sent is larger than 64 KiB and was not read.",
    todo: ["Go back and shorten what was pasted into the form."],
  },
  "too-many": {
    title: "Too much at once",
    detail: "More requests came from your network than one instance answers.",
    todo: ["Wait a moment, then load the page again."],
  },
  internal: {
    title: "Something went wrong here",
    detail:
      "The fault is in the service, not in what you entered. Nothing of your plan is lost: it stands in the address.",
    todo: ["Go back and try again.", "If it stays, tell whoever runs this service what you did."],
  },
};
