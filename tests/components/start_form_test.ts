import { assertEquals } from "@std/assert";
import { QUESTIONS } from "@/components/start_form.ts";
import { type Field, fieldAt, type ListField, type Section, SECTIONS } from "@/lib/plan/mod.ts";

Deno.test("the start asks every field marked for it, and no other", () => {
  const first: string[] = [];
  for (const [name, { fields }] of Object.entries<Section>(SECTIONS)) {
    for (const [key, field] of Object.entries<Field | ListField>(fields)) {
      if (field.type !== "list") {
        if (field.first) first.push(`${name}.${key}`);
        continue;
      }
      for (const [inner, each] of Object.entries(field.fields)) {
        if (each.first) first.push(`${name}.${key}.0.${inner}`);
      }
    }
  }
  const asked = QUESTIONS.flatMap(({ paths }) => paths);
  assertEquals(asked.toSorted(), first.toSorted());
  assertEquals(asked.filter((path) => fieldAt(path) === undefined), []);
});

Deno.test("the start asks eight questions", () => assertEquals(QUESTIONS.length, 8));
