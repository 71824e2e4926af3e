/** Makes the pages of the method book. */
import { mathmlReady } from "@/components/mathml.ts";
import { MethodPage } from "@/components/method_page.ts";
import { MethodsPage } from "@/components/methods_page.ts";
import { BOOK, methodById } from "@/lib/book/mod.ts";
import { page } from "./page.ts";

/** The index of all methods. */
export function methodsPage(): string {
  return page({ title: "Methods", children: MethodsPage({ chapters: BOOK }) });
}

/** The page of one method; undefined when there is none of that id. */
export async function methodPage(id: string): Promise<string | undefined> {
  const method = methodById(id);
  if (method === undefined) return undefined;
  await mathmlReady();
  const chapter = BOOK.find(({ methods }) => methods.includes(method));
  const subject = chapter?.title ?? "";
  return page({ title: method.title, children: MethodPage({ method, subject }) });
}
