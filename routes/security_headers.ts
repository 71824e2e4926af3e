/** The strictest headers that a page of own styles, scripts, images and forms runs under. */
import type { MiddlewareHandler } from "hono";
import { secureHeaders } from "hono/secure-headers";

/**
 * Sets the security headers of every answer.
 *
 * Nothing inline is allowed: no `<style>`, `style="…"`, `<script>` with text, `onclick="…"`.
 * SVG says its looks by presentation attributes and classes.
 */
export const securityHeaders: MiddlewareHandler = secureHeaders({
  contentSecurityPolicy: {
    defaultSrc: ["'none'"],
    styleSrc: ["'self'"],
    scriptSrc: ["'self'"],
    imgSrc: ["'self'", "data:"],
    fontSrc: ["'self'"],
    connectSrc: ["'self'"],
    manifestSrc: ["'self'"],
    formAction: ["'self'"],
    baseUri: ["'none'"],
    frameAncestors: ["'none'"],
  },
  crossOriginEmbedderPolicy: true,
  crossOriginOpenerPolicy: "same-origin",
  crossOriginResourcePolicy: "same-origin",
  permissionsPolicy: { camera: [], microphone: [], geolocation: [], payment: [], usb: [] },
  // An address may hold a whole plan: it is told to no other site. Stricter still,
  // `no-referrer` would make forms send `Origin: null`, which is refused.
  referrerPolicy: "same-origin",
  // Without includeSubDomains: what else runs under the host's domain is not ours to bind.
  strictTransportSecurity: "max-age=31536000",
  xFrameOptions: "DENY",
  xXssProtection: "0",
});
