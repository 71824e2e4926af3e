import { unitsReady } from "@/lib/units/mod.ts";
import { assertEquals, assertStringIncludes } from "@std/assert";

Deno.test("unitsReady() loads once", () => {
  assertEquals(unitsReady(), unitsReady());
});

Deno.test("units can be shown, not read, before mathjs is loaded", async () => {
  const code = `
    import { formatQuantity, parseQuantity } from "@/lib/units/mod.ts";
    console.log(formatQuantity(3e5, "pressure", "inch"));
    try { parseQuantity("3 bar", "pressure"); } catch (error) { console.log(error.message); }
  `;
  const { stdout } = await new Deno.Command(Deno.execPath(), {
    args: ["eval", "--ext=ts", code],
    cwd: new URL("../../../", import.meta.url),
  }).output();
  const said = new TextDecoder().decode(stdout);
  assertStringIncludes(said, "43.5 psi");
  assertStringIncludes(said, "await unitsReady() first");
});
