/** What was not taken as it was typed. */
import type { VNode } from "preact";
import { html } from "./html.ts";
import { labelOf } from "./label_of.ts";
import { sentence } from "./show.ts";

/** What {@linkcode NoteList} shows. */
export interface NoteListProps {
  /** What was converted on reading or is not used, by path. */
  readonly notes: Readonly<Record<string, string>>;
  /** Where a field is answered: `(path) => "#" + path`. */
  readonly fieldHref: (path: string) => string;
}

/** The notes, each with the answer it is about; nothing where there is none. */
export function NoteList({ notes, fieldHref }: NoteListProps): VNode | undefined {
  const all = Object.entries(notes);
  if (all.length === 0) return undefined;
  return html`
    <ul class="read-as">
      ${all.map(([path, note]) =>
        html`<li><a href=${fieldHref(path)}>${labelOf(path)}</a>: ${sentence(note)}</li>`
      )}
    </ul>
  `;
}
