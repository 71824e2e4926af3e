/** What a row or section of a plan is, as the user wrote it. */

/** A row or section as typed: text, whole numbers and rows, whatever is known. */
export type Typed = { readonly [name: string]: string | number | readonly Typed[] | undefined };
