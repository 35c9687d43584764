import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { FONT_FAMILY } from "../page/sheet-style.ts";
import type { FontPart } from "./font-runs.ts";

const require = createRequire(import.meta.url);
const WEIGHTS = { regular: 400, bold: 700 } as const;
export type FontWeight = keyof typeof WEIGHTS;

/** A font file as @fontsource/atkinson-hyperlegible ships it. */
export function fontFile(part: FontPart, weight: FontWeight, kind: "woff" | "woff2" = "woff"): Buffer {
  const name = `atkinson-hyperlegible-${part}-${WEIGHTS[weight]}-normal.${kind}`;
  return readFileSync(require.resolve(`@fontsource/atkinson-hyperlegible/files/${name}`));
}

/** CSS with the font itself inside, for an SVG file that should look the same on every machine. */
export function fontFaceCss(): string {
  return (["regular", "bold"] as const)
    .map((weight) => {
      const data = fontFile("latin", weight, "woff2").toString("base64");
      return `@font-face{font-family:'${FONT_FAMILY}';font-weight:${WEIGHTS[weight]};src:url(data:font/woff2;base64,${data}) format('woff2')}`;
    })
    .join("");
}
