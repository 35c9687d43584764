import { BOLD_WIDTHS, REGULAR_WIDTHS } from "./font-widths.ts";
import type { TextWeight } from "./sheet-style.ts";
import { mmOfPoints } from "./sheet-style.ts";

const table = (widths: Readonly<Record<number, string>>): ReadonlyMap<string, number> =>
  new Map(
    Object.entries(widths).flatMap(([width, characters]) => [...characters].map((each) => [each, Number(width)])),
  );
const WIDTHS: Readonly<Record<TextWeight, ReadonlyMap<string, number>>> = {
  regular: table(REGULAR_WIDTHS),
  bold: table(BOLD_WIDTHS),
};
// A character the font lacks is drawn by another: a full em is the widest it is likely to be.
const UNKNOWN_WIDTH = 1000;

/** Whether the sheet's own font can draw a character. */
export const inFont = (character: string): boolean => WIDTHS.regular.has(character);

/**
 * How wide a line of text is in the sheet's font, kerning left out (it draws letters a little closer, so the figure is
 * an upper estimate in practice).
 *
 * @param sizePt type size in points
 * @returns millimetres
 */
export function textWidthMm(text: string, sizePt: number, weight: TextWeight): number {
  let thousandths = 0;
  for (const character of text) thousandths += WIDTHS[weight].get(character) ?? UNKNOWN_WIDTH;
  return (thousandths / 1000) * mmOfPoints(sizePt);
}

/** Breaks text into lines no wider than `widthMm`: between words, or inside a word too long for a line of its own. */
export function wrapText(text: string, widthMm: number, sizePt: number, weight: TextWeight = "regular"): string[] {
  const fits = (line: string): boolean => textWidthMm(line, sizePt, weight) <= widthMm;
  const lines: string[] = [];
  let line = "";
  for (const word of unparted(text)
    .split(/[ \t\r\n]+/)
    .filter((each) => each !== "")) {
    const longer = line === "" ? word : `${line} ${word}`;
    if (fits(longer)) {
      line = longer;
      continue;
    }
    if (line !== "") lines.push(line);
    line = "";
    for (const character of word) {
      if (line !== "" && !fits(line + character)) {
        lines.push(line);
        line = "";
      }
      line += character;
    }
  }
  return line === "" && lines.length > 0 ? lines : [...lines, line];
}

/** A number keeps its fraction and its unit beside it: the space between them becomes one that no line breaks at. */
const unparted = (text: string): string =>
  text
    .replaceAll(/(\d) (?=(?:mm|cm|m|in|kg|°C|°F|%|ppm|µg\/m³|µg\/mL|mg\/L|ft³|o’clock)(?![a-z]))/g, "$1\u00a0")
    .replaceAll(/(\d) (?=\d+\/\d)|(\d) (?=×)|(×) (?=\d)/g, "$1$2$3\u00a0");

/** The text cut to a width, an ellipsis showing that something is missing. */
export function shortenedText(text: string, widthMm: number, sizePt: number, weight: TextWeight = "regular"): string {
  if (textWidthMm(text, sizePt, weight) <= widthMm) return text;
  const characters = [...text];
  while (characters.length > 0 && textWidthMm(`${characters.join("").trimEnd()}…`, sizePt, weight) > widthMm)
    characters.pop();
  return `${characters.join("").trimEnd()}…`;
}
