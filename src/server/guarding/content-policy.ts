import type { FastifyHelmetOptions } from "@fastify/helmet";

/** What a browser may do with the studio's pages: run and show what comes from this server, and nothing else. */
export const CONTENT_POLICY: FastifyHelmetOptions = {
  contentSecurityPolicy: {
    useDefaults: false,
    directives: {
      "default-src": ["'none'"],
      "script-src": ["'self'"],
      // Drawings and charts carry styles of their own as they are used; styles run nothing.
      "style-src": ["'self'", "'unsafe-inline'"],
      "img-src": ["'self'", "data:", "blob:"],
      "font-src": ["'self'", "data:"],
      "connect-src": ["'self'"],
      "worker-src": ["'self'"],
      "manifest-src": ["'self'"],
      // The sheet, shown before it is printed.
      "frame-src": ["'self'", "blob:"],
      "object-src": ["'self'", "blob:"],
      "base-uri": ["'none'"],
      "form-action": ["'self'"],
      "frame-ancestors": ["'self'"],
    },
  },
  // Plain HTTP at home: a browser told to come back encrypted would find nobody.
  strictTransportSecurity: false,
  crossOriginOpenerPolicy: { policy: "same-origin" },
  crossOriginResourcePolicy: { policy: "same-origin" },
  referrerPolicy: { policy: "no-referrer" },
  xFrameOptions: { action: "sameorigin" },
};
