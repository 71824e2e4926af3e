/** What every request carries through the middleware. */

/** Hono's type for it. */
export interface AppEnv {
  /** Values that middleware sets. */
  Variables: {
    /** A random name of this request, for the log and the error page. */
    requestId: string;
  };
}
