import { element, type SvgNode } from "../svg-writer.ts";

export type TextWeight = "regular" | "bold";

/** Our own look: warm ink on white, one accent of fired earth that stays a firm mid grey where colour is missing. */
export const COLOURS = {
  ink: "#2b2523",
  quiet: "#6a5e57",
  accent: "#8c3b24",
  accentPale: "#dcb9a9",
  clay: "#f3e8dd",
  wall: "#e5d6c9",
  line: "#cfc2b7",
  paper: "#ffffff",
} as const;

/** Type sizes in points. Nothing that must be read is smaller than `small`. */
export const SIZES = { title: 25, heading: 14, body: 11, small: 9 } as const;

/** Line weights in millimetres. */
export const LINES = { hair: 0.15, fine: 0.25, firm: 0.4, bold: 0.7 } as const;

export const FONT_FAMILY = "Atkinson Hyperlegible";
const FONT_STACK = `'${FONT_FAMILY}', 'Helvetica Neue', Arial, 'Liberation Sans', sans-serif`;

/** A point is 1/72 inch. */
export const mmOfPoints = (points: number): number => (points * 25.4) / 72;
/** How far apart lines of text stand. */
export const lineHeightMm = (sizePt: number): number => mmOfPoints(sizePt) * 1.36;
/** Height of a capital letter: 0.668 em (the font's OS/2 table). */
export const capHeightMm = (sizePt: number): number => mmOfPoints(sizePt) * 0.668;

export interface TextStyle {
  readonly sizePt?: number;
  readonly weight?: TextWeight;
  readonly fill?: string;
  readonly anchor?: "start" | "middle" | "end";
  /** Letter spacing in millimetres. */
  readonly spacingMm?: number;
}

/** One line of text, its baseline at y. Millimetres. */
export function textLine(x: number, y: number, text: string, style: TextStyle = {}): SvgNode {
  return element(
    "text",
    {
      x,
      y,
      "font-family": FONT_STACK,
      "font-size": mmOfPoints(style.sizePt ?? SIZES.body),
      "font-weight": style.weight === "bold" ? "bold" : null,
      "text-anchor": style.anchor && style.anchor !== "start" ? style.anchor : null,
      "letter-spacing": style.spacingMm,
      fill: style.fill ?? COLOURS.ink,
    },
    text,
  );
}

/** A line of text whose capitals stand centred about y. Millimetres. */
export const centredText = (x: number, y: number, text: string, style: TextStyle = {}): SvgNode =>
  textLine(x, y + capHeightMm(style.sizePt ?? SIZES.body) / 2, text, { anchor: "middle", ...style });
