/** The parts of the alphabet the sheet's font comes in; each is a file of its own. */
export type FontPart = "latin" | "latin-ext";

/** Which characters each font file can draw. */
export type Coverage = Readonly<Record<FontPart, (character: string) => boolean>>;

// Signs the font lacks and what says the same.
const SPELLED: Readonly<Record<string, string>> = {
  "≤": "<=",
  "≥": ">=",
  "→": "->",
  "←": "<-",
  "′": "'",
  "″": '"',
  "\u2009": " ",
  "\u202f": " ",
  "\u2011": "-",
};

/**
 * An SVG document whose text is cut into runs, each naming the one font file that can draw it: PDF, unlike a browser,
 * does not look for another font by itself. A sign in neither file is spelled out where it can be; otherwise it stays and
 * shows as the font's empty box.
 */
export function withFontRuns(svg: string, coverage: Coverage): string {
  return svg.replaceAll(/(<text\b[^>]*>)([^<]*)(<\/text>)/g, (_, open: string, content: string, close: string) => {
    const characters = [...decoded(content)].flatMap((each) => drawable(each, coverage));
    const runs: { part: FontPart; text: string }[] = [];
    for (const character of characters) {
      const part = coverage.latin(character) || !coverage["latin-ext"](character) ? "latin" : "latin-ext";
      const last = runs.at(-1);
      if (last?.part === part) last.text += character;
      else runs.push({ part, text: character });
    }
    const inside = runs.map(({ part, text }) =>
      part === "latin" ? encoded(text) : `<tspan font-family="latin-ext">${encoded(text)}</tspan>`,
    );
    return `${open}${inside.join("")}${close}`;
  });
}

function drawable(character: string, coverage: Coverage): string[] {
  const known = (each: string): boolean => coverage.latin(each) || coverage["latin-ext"](each);
  if (known(character)) return [character];
  const spelled = SPELLED[character];
  if (spelled !== undefined) return [...spelled];
  const plain = [...character.normalize("NFKD")].filter((each) => !/\p{M}/u.test(each));
  return plain.length > 0 && plain.every(known) ? plain : [character];
}

const ENTITIES: Readonly<Record<string, string>> = { "&amp;": "&", "&lt;": "<", "&gt;": ">", "&quot;": '"' };
const decoded = (text: string): string => text.replaceAll(/&(?:amp|lt|gt|quot);/g, (each) => ENTITIES[each] as string);
const encoded = (text: string): string =>
  text.replaceAll("&", "&amp;").replaceAll("<", "&lt;").replaceAll(">", "&gt;").replaceAll('"', "&quot;");
