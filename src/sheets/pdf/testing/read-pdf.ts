import { inflateSync } from "node:zlib";

/** What a PDF holds, as far as a test of the sheet asks. */
export interface ReadPdf {
  readonly pages: readonly { readonly widthPt: number; readonly heightPt: number; readonly text: string }[];
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
      const text = shownText(stream(object(reference(body, "Contents"))), fonts);
      return { widthPt: Number(widthPt), heightPt: Number(heightPt), text };
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
 * The text of a page's content. Each run of a line is a text object of its own; a line ends where the drawing state is
 * saved or restored, or where text moves to another height.
 */
function shownText(content: string, fonts: ReadonlyMap<string, ReadonlyMap<string, string>>): string {
  let font: ReadonlyMap<string, string> | undefined;
  let height = "";
  let text = "";
  for (const [, name, y, hex, state] of content.matchAll(/\/(F\d+) [\d.]+ Tf|(\S+) Tm\n|<([0-9a-f]+)> Tj|^(q|Q)$/gm)) {
    if (name) font = fonts.get(name);
    else if (state || (y && y !== height)) {
      height = y ?? "";
      if (text !== "" && !text.endsWith("\n")) text += "\n";
    }
    for (const code of hex?.match(/.{4}/g) ?? []) text += font?.get(code.toLowerCase()) ?? "\uFFFD";
  }
  return text.replaceAll("\u00a0", " ");
}
