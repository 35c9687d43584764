import PDFDocument from "pdfkit";
import svgToPdf from "svg-to-pdfkit";
import type { SheetPage } from "../page/sheet-page.ts";
import { type Coverage, type FontPart, withFontRuns } from "./font-runs.ts";
import { type FontWeight, fontFile } from "./sheet-fonts.ts";

const POINTS_PER_MM = 72 / 25.4;
const PARTS: readonly FontPart[] = ["latin", "latin-ext"];
const FONT_WEIGHTS: readonly FontWeight[] = ["regular", "bold"];

/**
 * The pages as one PDF: vector drawings, text as text, the sheet's font embedded.
 *
 * @param pages whole SVG documents and their sizes in millimetres
 * @throws Error where a page is not SVG that PDF can show
 */
export async function pagesToPdf(pages: readonly SheetPage[]): Promise<Uint8Array> {
  const document = new PDFDocument({
    autoFirstPage: false,
    info: { Title: pages[0]?.title ?? "Load sheet", Creator: "Wareboard" },
  });
  const chunks: Uint8Array[] = [];
  const finished = new Promise<void>((resolve, reject) => {
    document.on("data", (chunk: Uint8Array) => chunks.push(chunk));
    document.on("end", resolve);
    document.on("error", reject);
  });
  for (const part of PARTS) {
    for (const weight of FONT_WEIGHTS) document.registerFont(`${part}-${weight}`, fontFile(part, weight));
  }
  const coverage = coverageOf(document);
  for (const page of pages) {
    const width = page.widthMm * POINTS_PER_MM;
    const height = page.heightMm * POINTS_PER_MM;
    document.addPage({ size: [width, height], margin: 0 });
    svgToPdf(document as never, withFontRuns(page.svg, coverage), 0, 0, {
      width,
      height,
      // Width and height are points; by default the library takes bare lengths for CSS pixels, 3/4 of a point.
      assumePt: true,
      preserveAspectRatio: "xMinYMin meet",
      fontCallback: (family, bold) => `${family === "latin-ext" ? family : "latin"}-${bold ? "bold" : "regular"}`,
      warningCallback: (warning) => {
        throw new Error(`The page "${page.title}" cannot be set in PDF: ${warning}`);
      },
    });
  }
  document.end();
  await finished;
  return new Uint8Array(Buffer.concat(chunks));
}

/** Asks the font files themselves what they can draw. */
function coverageOf(document: PDFKit.PDFDocument): Coverage {
  const has = (part: FontPart): ((character: string) => boolean) => {
    // pdfkit keeps the font it opened; its types do not say so.
    const opened = (document.font(`${part}-regular`) as unknown as { _font: { font: FontWithGlyphs } })._font.font;
    return (character) => opened.hasGlyphForCodePoint(character.codePointAt(0) as number);
  };
  return { latin: has("latin"), "latin-ext": has("latin-ext") };
}

interface FontWithGlyphs {
  hasGlyphForCodePoint(codePoint: number): boolean;
}
