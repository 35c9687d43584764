import { inflateSync } from "node:zlib";

/** A line of text and where it begins, in points from the page's lower left corner. */
export interface ReadLine {
  readonly text: string;
  readonly xPt: number;
  readonly yPt: number;
}

/** What a PDF holds, as far as a test of the sheet asks. */
export interface ReadPdf {
  readonly pages: readonly {
    readonly widthPt: number;
    readonly heightPt: number;
    readonly text: string;
    readonly lines: readonly ReadLine[];
  }[];
  /** Names of the fonts whose files are inside. */
  readonly embedded: readonly string[];
  /** Names of fonts the file relies on without bringing them. */
  readonly missing: readonly string[];
  readonly images: number;
}

/**
 * Reads back a PDF of plain objects (no object streams) by ISO 32000-1: page sizes (§7.7.3), fonts (§9.6), and the text
 * shown on each page through each font's ToUnicode map (§9.10.3). Knows no more than pdfkit writes; throws at the rest.
 */
export function readPdf(bytes: Uint8Array): ReadPdf {
  const raw = Buffer.from(bytes).toString("latin1");
  const objects = new Map<string, string>();
  for (const [, id, body] of raw.matchAll(/(?:^|\n)(\d+) 0 obj\n([\s\S]*?)\nendobj/g))
    objects.set(id as string, body as string);
  const object = (id: string | undefined): string => {
    const body = id === undefined ? undefined : objects.get(id);
    if (body === undefined) throw new Error(`no object ${id}`);
    return body;
  };
  const reference = (body: string, key: string): string | undefined => new RegExp(`/${key} (\\d+) 0 R`).exec(body)?.[1];
  const stream = (body: string): string => {
    const from = body.indexOf("stream\n") + "stream\n".length;
    const data = Buffer.from(body.slice(from, body.lastIndexOf("\nendstream")), "latin1");
    return (body.includes("/FlateDecode") ? inflateSync(data) : data).toString("latin1");
  };
  const all = [...objects.values()];
  const pages = all
    .filter((body) => /\/Type \/Page\b/.test(body))
    .map((body) => {
      const [, widthPt, heightPt] = /\/MediaBox \[0 0 ([\d.]+) ([\d.]+)\]/.exec(body) ?? [];
      const resources = object(reference(body, "Resources"));
      const fonts = new Map<string, Map<string, string>>();
      for (const [, name, id] of (/\/Font <<([\s\S]*?)>>/.exec(resources)?.[1] ?? "").matchAll(/\/(F\d+) (\d+) 0 R/g)) {
        fonts.set(name as string, unicodeMap(stream(object(reference(object(id), "ToUnicode")))));
      }
      const lines = shownLines(stream(object(reference(body, "Contents"))), fonts);
      const text = lines.map((line) => line.text).join("\n");
      return { widthPt: Number(widthPt), heightPt: Number(heightPt), text, lines };
    });
  const descriptors = all.filter((body) => body.includes("/Type /FontDescriptor"));
  const nameOf = (body: string): string => /\/FontName \/(\S+)/.exec(body)?.[1] ?? "";
  const simple = all.filter((body) => /\/Type \/Font\b/.test(body) && /\/Subtype \/Type1\b/.test(body));
  return {
    pages,
    embedded: descriptors.filter((body) => /\/FontFile[23]? \d+ 0 R/.test(body)).map(nameOf),
    missing: [
      ...descriptors.filter((body) => !/\/FontFile[23]? \d+ 0 R/.test(body)).map(nameOf),
      ...simple.map((body) => /\/BaseFont \/(\S+)/.exec(body)?.[1] ?? ""),
    ],
    images: all.filter((body) => body.includes("/Subtype /Image")).length,
  };
}

/** Glyph codes to text: `<from> <to> [<a> <b> …]` ranges of a ToUnicode map. */
function unicodeMap(cmap: string): Map<string, string> {
  const map = new Map<string, string>();
  for (const [, from, list] of cmap.matchAll(/<([0-9a-f]{4})> <[0-9a-f]{4}> \[([^\]]*)\]/gi)) {
    let code = Number.parseInt(from as string, 16);
    for (const [, hex] of (list as string).matchAll(/<([0-9a-f ]*)>/gi)) {
      map.set(
        code.toString(16).padStart(4, "0"),
        Buffer.from((hex as string).replaceAll(" ", ""), "hex")
          .swap16()
          .toString("utf16le"),
      );
      code += 1;
    }
  }
  return map;
}

/**
 * The lines of text of a page's content, and where each begins on the page. Each run of a line is a text object of its
 * own; a line ends where the drawing state is saved or restored, or where text moves to another height.
 */
function shownLines(content: string, fonts: ReadonlyMap<string, ReadonlyMap<string, string>>): ReadLine[] {
  let font: ReadonlyMap<string, string> | undefined;
  let matrix: Matrix = [1, 0, 0, 1, 0, 0];
  const saved: Matrix[] = [];
  const lines: (ReadLine & { text: string; height: number })[] = [];
  let open = false;
  for (const [, name, numbers, operator, hex, state] of content.matchAll(
    /\/(F\d+) [\d.]+ Tf|^((?:-?[\d.]+ ){6})(cm|Tm)$|<([0-9a-f]+)> Tj|^(q|Q)$/gm,
  )) {
    if (name) font = fonts.get(name);
    if (state) open = false;
    if (state === "q") saved.push(matrix);
    if (state === "Q") matrix = saved.pop() as Matrix;
    const six = numbers?.trim().split(" ").map(Number) as Matrix | undefined;
    if (six && operator === "cm") matrix = multiplied(six, matrix);
    if (six && operator === "Tm") {
      const [, , , , xPt, yPt] = multiplied(six, matrix);
      if (!open || lines.at(-1)?.height !== six[5]) lines.push({ text: "", xPt, yPt, height: six[5] });
      open = true;
    }
    const last = lines.at(-1);
    for (const code of hex?.match(/.{4}/g) ?? []) if (last) last.text += font?.get(code.toLowerCase()) ?? "\uFFFD";
  }
  return lines.map(({ text, xPt, yPt }) => ({ text: text.replaceAll("\u00a0", " "), xPt, yPt }));
}

type Matrix = [number, number, number, number, number, number];

/** One transformation and then another (ISO 32000-1 §8.3.4). */
function multiplied([a, b, c, d, e, f]: Matrix, [g, h, i, j, k, l]: Matrix): Matrix {
  return [a * g + b * i, a * h + b * j, c * g + d * i, c * h + d * j, e * g + f * i + k, e * h + f * j + l];
}
