/** One SVG element: its attributes, and what stands inside it. Text is kept as it is and escaped once, when written. */
export interface SvgNode {
  readonly name: string;
  readonly attributes: Readonly<Record<string, string | number>>;
  readonly children: readonly (SvgNode | string)[];
}

type Attributes = Readonly<Record<string, string | number | null | undefined>>;

/** An element. Attributes that are null or undefined are left out; numbers are written to a thousandth. */
export function element(name: string, attributes: Attributes = {}, ...children: (SvgNode | string)[]): SvgNode {
  const kept = Object.entries(attributes).filter(
    (entry): entry is [string, string | number] => entry[1] !== null && entry[1] !== undefined,
  );
  return { name, attributes: Object.fromEntries(kept), children };
}

/** Elements drawn together, one over the other. */
export const group = (children: readonly SvgNode[], attributes: Attributes = {}): SvgNode =>
  element("g", attributes, ...children);

/** A group moved right and down. */
export const moved = (x: number, y: number, children: readonly SvgNode[]): SvgNode =>
  group(children, { transform: `translate(${written(x)} ${written(y)})` });

/** A path's `d` from commands and numbers. */
export const pathOf = (...parts: (string | number)[]): string =>
  parts.map((part) => (typeof part === "number" ? written(part) : part)).join(" ");

/** A closed outline through points. */
export const closedPath = (points: readonly (readonly [number, number])[]): string =>
  `${points.map(([x, y], i) => `${i === 0 ? "M" : "L"} ${written(x)} ${written(y)}`).join(" ")} Z`;

/** The element as SVG text. Every attribute and every piece of text is escaped. */
export function svgText(node: SvgNode): string {
  const attributes = Object.entries(node.attributes)
    .map(([name, value]) => ` ${name}="${escaped(typeof value === "number" ? written(value) : value)}"`)
    .join("");
  if (node.children.length === 0) return `<${node.name}${attributes}/>`;
  const inside = node.children.map((child) => (typeof child === "string" ? escaped(child) : svgText(child))).join("");
  return `<${node.name}${attributes}>${inside}</${node.name}>`;
}

/** A number to a thousandth, without an exponent or a negative zero. */
function written(value: number): string {
  if (!Number.isFinite(value)) throw new RangeError(`An SVG number must be finite; found ${value}.`);
  const rounded = Math.round(value * 1000) / 1000;
  return String(rounded === 0 ? 0 : rounded);
}

const ESCAPES: Readonly<Record<string, string>> = { "&": "&amp;", "<": "&lt;", ">": "&gt;", '"': "&quot;" };

/** Text made safe for SVG: markup escaped, characters XML 1.0 forbids (§2.2), half pairs too, replaced by U+FFFD. */
function escaped(text: string): string {
  return text.replaceAll(FORBIDDEN, "\uFFFD").replaceAll(/[&<>"]/g, (sign) => ESCAPES[sign] as string);
}

// Everything but tab, line feed, carriage return and the printable ranges of XML 1.0 §2.2.
const FORBIDDEN = /[^\t\n\r\u0020-\uD7FF\uE000-\uFFFD\u{10000}-\u{10FFFF}]/gu;
