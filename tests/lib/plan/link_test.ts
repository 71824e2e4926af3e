import { assert, assertEquals, assertMatch, assertRejects } from "@std/assert";
import { describe, it } from "@std/testing/bdd";
import fc from "fast-check";
import * as zlib from "node:zlib";
import {
  LINK_MAX_BYTES,
  LINK_MAX_CHARACTERS,
  type LinkFault,
  packPlan,
  unpackPlan,
} from "@/lib/plan/link.ts";
import { sources } from "../../helpers/sources.ts";

const PLAN = {
  version: 1,
  engine: { cycle: "four-stroke", cylinders: 4 },
  demand: { power: "420 hp", speed: "7200 1/min" },
  rail: { bore: "5/8 in", note: "Ø 16 mm, “long” bar" },
};
const CODE = await packPlan(PLAN);

/** A code made by hand, so that only what a case says is wrong with it. */
function codeOf(body: Uint8Array, { version = "1", crc = zlib.crc32(body) } = {}): string {
  const head = new Uint8Array(6);
  new DataView(head.buffer).setUint16(0, body.length);
  new DataView(head.buffer).setUint32(2, crc);
  const whole = new Uint8Array([...head, ...body]);
  return `${version}.${whole.toBase64({ alphabet: "base64url", omitPadding: true })}`;
}
const deflate = (text: string) => new Uint8Array(zlib.deflateRawSync(text));

describe("packPlan()", () => {
  it("writes what zlib's own inflate and CRC-32 read", () => {
    const bytes = Uint8Array.fromBase64(CODE.slice(2), { alphabet: "base64url" });
    const body = bytes.slice(6);
    const head = new DataView(bytes.buffer);
    assertEquals(head.getUint16(0), body.length);
    assertEquals(head.getUint32(2), zlib.crc32(body));
    assertEquals(JSON.parse(zlib.inflateRawSync(body).toString()), PLAN);
  });
  it("uses only what an address carries unchanged", () => assertMatch(CODE, /^1\.[\w-]+$/));
  it("gives equal codes for equal plans, whatever the order of keys", async () => {
    const { rail, demand, engine, version } = PLAN;
    assertEquals(await packPlan({ rail, engine, version, demand }), CODE);
  });
  it("keeps the largest demo to a third of the budget", async () => {
    for (const { path, text } of await sources("seeds", /\.json$/)) {
      const { length } = await packPlan(JSON.parse(text));
      assert(length < LINK_MAX_CHARACTERS / 3, `${path}: ${length} characters`);
    }
  });
  it("refuses a plan whose code would be too long", async () => {
    const random = Array.from({ length: 5000 }, (_, i) => Math.imul(i + 1, 0x9e3779b1) >>> 0);
    await assertRejects(() => packPlan(random), RangeError, `${LINK_MAX_CHARACTERS} characters`);
  });
  it("refuses a plan whose JSON is too large", async () => {
    const text = "a".repeat(LINK_MAX_BYTES);
    await assertRejects(() => packPlan(text), RangeError, `${LINK_MAX_BYTES} bytes`);
  });
  it("refuses what is no JSON", async () => {
    await assertRejects(() => packPlan(undefined), TypeError);
  });
});

describe("unpackPlan()", () => {
  it("gives back what was packed", () =>
    fc.assert(fc.asyncProperty(fc.jsonValue(), async (json) => {
      const plan = JSON.parse(JSON.stringify(json)); // JSON has no -0
      assertEquals(await unpackPlan(await packPlan(json)), { ok: true, plan });
    })));

  it("reads the largest plan that may be packed", async () => {
    const plan = "a".repeat(LINK_MAX_BYTES - 2);
    assertEquals(await unpackPlan(await packPlan(plan)), { ok: true, plan });
  });

  it("leaves out what a message hangs on to the end of a link", async () => {
    for (const end of [".", ")", ").", ">", "\n", "…", '".']) {
      assertEquals(await unpackPlan(CODE + end), { ok: true, plan: PLAN }, end);
    }
  });

  it("calls every beginning of a code cut off", async () => {
    for (let length = 0; length < CODE.length; length++) {
      const reason = "cut-off" satisfies LinkFault;
      assertEquals(await unpackPlan(CODE.slice(0, length)), { ok: false, reason }, `${length}`);
    }
  });

  it("finds any one character that was changed", () => {
    const letters = fc.constantFrom(..."ABCabc012-_");
    const at = fc.integer({ min: 2, max: CODE.length - 2 });
    return fc.assert(fc.asyncProperty(at, letters, async (index, letter) => {
      fc.pre(CODE[index] !== letter);
      const read = await unpackPlan(CODE.slice(0, index) + letter + CODE.slice(index + 1));
      // In the head's length a change can make the code look too short.
      const reasons = index < 5 ? ["cut-off", "damaged"] : ["damaged"];
      assert(!read.ok && reasons.includes(read.reason), JSON.stringify(read));
    }));
  });

  const cases: [name: string, code: string, reason: LinkFault][] = [
    ["a later version", codeOf(deflate("{}"), { version: "2" }), "unknown-version"],
    ["version nought", codeOf(deflate("{}"), { version: "0" }), "unknown-version"],
    ["a version written otherwise", codeOf(deflate("{}"), { version: "01" }), "unknown-version"],
    ["no version", codeOf(deflate("{}"), { version: "" }), "damaged"],
    ["text of another kind", "hello", "damaged"],
    ["a letter too many", `${CODE}A`, "damaged"],
    ["a code within other text", `see 1.${CODE}`, "damaged"],
    ["letters of no alphabet within", "1.AAA!AAAA", "damaged"],
    ["a wrong sum", codeOf(deflate("{}"), { crc: 1 }), "damaged"],
    ["bytes that do not inflate", codeOf(new Uint8Array([255, 255, 255])), "damaged"],
    ["no bytes at all", codeOf(new Uint8Array()), "damaged"],
    ["deflated bytes that end early", codeOf(deflate("[1,2,3]").slice(0, -4)), "damaged"],
    ["text that is no JSON", codeOf(deflate("{power}")), "damaged"],
    ["text that is no UTF-8", codeOf(new Uint8Array([1, 1, 0, 254, 255, 0xff])), "damaged"],
    ["JSON one byte too large", codeOf(deflate(`"${"a".repeat(65_535)}"`)), "too-long"],
    ["a bomb", codeOf(deflate("a".repeat(3e6))), "too-long"],
    ["a code over the budget", `1.${"A".repeat(LINK_MAX_CHARACTERS)}`, "too-long"],
  ];
  for (const [name, code, reason] of cases) {
    it(`says of ${name}: ${reason}`, async () => {
      assertEquals(await unpackPlan(code), { ok: false, reason });
    });
  }

  it("never throws, whatever the text", () => {
    const reasons = ["cut-off", "damaged", "too-long", "unknown-version"];
    const text = fc.oneof(
      fc.string({ unit: "binary" }),
      fc.string().map((s) => `1.${s}`),
      fc.base64String().map((s) => `1.${s}`),
      fc.uint8Array().map((body) => codeOf(body)),
    );
    return fc.assert(fc.asyncProperty(text, async (code) => {
      const read = await unpackPlan(code);
      assert(read.ok || reasons.includes(read.reason));
    }));
  });
});
