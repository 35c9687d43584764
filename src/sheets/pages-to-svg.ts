import type { SheetPage } from "./page/sheet-page.ts";
import { COLOURS } from "./page/sheet-style.ts";

const BETWEEN_PAGES_MM = 8;

/**
 * All pages in one SVG file, one under another, or several in a row.
 *
 * @param fontFaceCss CSS with the sheet's font inside it, where the file should look the same on every machine
 * @param across how many pages stand side by side
 */
export function pagesToSvg(pages: readonly SheetPage[], fontFaceCss = "", across = 1): string {
  const pageWidth = Math.max(1, ...pages.map((page) => page.widthMm));
  const pageHeight = Math.max(1, ...pages.map((page) => page.heightMm));
  const rows = Math.max(1, Math.ceil(pages.length / across));
  const width = across * (pageWidth + BETWEEN_PAGES_MM) - BETWEEN_PAGES_MM;
  const height = rows * (pageHeight + BETWEEN_PAGES_MM) - BETWEEN_PAGES_MM;
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" width="${width}mm" height="${height}mm" viewBox="0 0 ${width} ${height}">`,
    fontFaceCss === "" ? "" : `<style>${fontFaceCss.replaceAll("&", "&amp;").replaceAll("<", "&lt;")}</style>`,
    `<rect width="${width}" height="${height}" fill="${COLOURS.line}"/>`,
    ...pages.map((page, i) => {
      const x = (i % across) * (pageWidth + BETWEEN_PAGES_MM);
      return placedPage(page, x, Math.floor(i / across) * (pageHeight + BETWEEN_PAGES_MM));
    }),
    "</svg>\n",
  ].join("");
}

/** The page's own document with its size in the outer file's millimetres and its corner at a place. */
function placedPage(page: SheetPage, x: number, y: number): string {
  const start = page.svg.indexOf("<svg");
  const end = page.svg.indexOf(">", start);
  if (start < 0 || end < 0) throw new RangeError(`The page "${page.title}" is not an SVG document.`);
  const opening = page.svg.slice(start + 4, end).replaceAll(/\s(?:x|y|width|height)="[^"]*"/g, "");
  return `<svg x="${x}" y="${y}" width="${page.widthMm}" height="${page.heightMm}"${opening}>${page.svg.slice(end + 1)}`;
}
