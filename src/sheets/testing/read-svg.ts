/** An element as read back from SVG text. */
export interface ReadElement {
  readonly name: string;
  readonly attributes: Readonly<Record<string, string>>;
  readonly children: ReadElement[];
  text: string;
}

const ENTITIES: Readonly<Record<string, string>> = { amp: "&", lt: "<", gt: ">", quot: '"' };

/**
 * Reads SVG text strictly, by the grammar of XML 1.0: one root, every tag closed by its own name, attributes quoted and
 * named once, no bare `&` or `<`, no forbidden character. Knows no comments, CDATA or DOCTYPE: the sheet writes none.
 *
 * @throws Error at the first fault
 */
export function readSvg(svg: string): ReadElement {
  const root: ReadElement = { name: "", attributes: {}, children: [], text: "" };
  const open = [root];
  // Characters outside XML 1.0's Char (§2.2), half pairs included.
  if (/[^\t\n\r\u0020-\uD7FF\uE000-\uFFFD\u{10000}-\u{10FFFF}]/u.test(svg)) throw new Error("forbidden character");
  let at = 0;
  while (at < svg.length) {
    const inside = open.at(-1) as ReadElement;
    const next = svg.indexOf("<", at);
    const text = svg.slice(at, next < 0 ? svg.length : next);
    if (inside === root && text.trim() !== "") throw new Error(`text outside the root: ${text}`);
    inside.text += plain(text);
    if (next < 0) break;
    const end = svg.indexOf(">", next);
    const tag = svg.slice(next, end + 1);
    const closing = /^<\/([a-zA-Z]+)>$/.exec(tag);
    const opening = /^<([a-zA-Z]+)((?:\s+[a-zA-Z][a-zA-Z0-9:-]*="[^"<]*")*)\s*(\/?)>$/.exec(tag);
    if (closing) {
      if (inside.name !== closing[1]) throw new Error(`${tag} closes <${inside.name}>`);
      open.pop();
    } else if (opening) {
      const child = {
        name: opening[1] as string,
        attributes: readAttributes(opening[2] ?? ""),
        children: [],
        text: "",
      };
      inside.children.push(child);
      if (opening[3] !== "/") open.push(child);
    } else throw new Error(`not a tag: ${tag}`);
    at = end + 1;
  }
  if (open.length !== 1) throw new Error(`<${open.at(-1)?.name}> is never closed`);
  if (root.children.length !== 1) throw new Error(`${root.children.length} roots`);
  return root.children[0] as ReadElement;
}

function readAttributes(text: string): Record<string, string> {
  const attributes: Record<string, string> = {};
  for (const [, name, value] of text.matchAll(/([a-zA-Z][a-zA-Z0-9:-]*)="([^"]*)"/g)) {
    if ((name as string) in attributes) throw new Error(`${name} twice`);
    attributes[name as string] = plain(value as string);
  }
  return attributes;
}

function plain(text: string): string {
  return text.replaceAll(/&([a-z]*);?/g, (found, name: string) => {
    const sign = ENTITIES[name];
    if (sign === undefined || !found.endsWith(";")) throw new Error(`a bare & in ${text}`);
    return sign;
  });
}

/** Every element below and including this one that a test holds for. */
export function findAll(element: ReadElement, holds: (element: ReadElement) => boolean): ReadElement[] {
  return [...(holds(element) ? [element] : []), ...element.children.flatMap((child) => findAll(child, holds))];
}

/** Every line of text, with where its baseline starts or ends on the page, moves of its groups added up. */
export function findTexts(
  element: ReadElement,
  x = 0,
  y = 0,
): { text: string; x: number; y: number; element: ReadElement }[] {
  const [dx, dy] = moveOf(element);
  const here =
    element.name === "text"
      ? [
          {
            text: element.text.replaceAll("\u00a0", " "),
            x: x + Number(element.attributes.x),
            y: y + Number(element.attributes.y),
            element,
          },
        ]
      : [];
  return [...here, ...element.children.flatMap((child) => findTexts(child, x + dx, y + dy))];
}

function moveOf(element: ReadElement): [number, number] {
  const move = /^translate\((\S+) (\S+)\)$/.exec(element.attributes.transform ?? "");
  return move ? [Number(move[1]), Number(move[2])] : [0, 0];
}
