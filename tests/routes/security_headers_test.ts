import { assertEquals } from "@std/assert";
import { createApp } from "@/routes/app.ts";

const EXPECTED: [name: string, value: string | null][] = [
  [
    "content-security-policy",
    "default-src 'none'; style-src 'self'; script-src 'self'; img-src 'self' data:; " +
    "font-src 'self'; connect-src 'self'; manifest-src 'self'; form-action 'self'; " +
    "base-uri 'none'; frame-ancestors 'none'",
  ],
  ["x-content-type-options", "nosniff"],
  ["x-frame-options", "DENY"],
  ["referrer-policy", "same-origin"],
  ["cross-origin-opener-policy", "same-origin"],
  ["cross-origin-resource-policy", "same-origin"],
  ["cross-origin-embedder-policy", "require-corp"],
  ["strict-transport-security", "max-age=31536000"],
  ["permissions-policy", "camera=(), microphone=(), geolocation=(), payment=(), usb=()"],
  ["x-powered-by", null],
];

for (const path of ["/", "/healthz", "/no-such", "/api/no-such", "/favicon.ico"]) {
  Deno.test(`${path} carries the security headers`, async () => {
    const { headers } = await createApp().request(path);
    for (const [name, value] of EXPECTED) assertEquals(headers.get(name), value, name);
  });
}
