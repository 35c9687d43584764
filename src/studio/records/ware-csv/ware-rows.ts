import { parse } from "csv-parse/browser/esm/sync";
import { BadInput, shown } from "../../../measures/bad-input.ts";
import { unguarded } from "./cell-safety.ts";
import { ID_HEADING, WARE_COLUMNS } from "./ware-columns.ts";

/** A ware list taken apart into cells. */
export interface WareRows {
  /** What is under which heading, row by row. */
  readonly rows: readonly { readonly line: number; readonly cells: ReadonlyMap<string, string> }[];
  /** Headings that say nothing of ware; their columns are left aside. */
  readonly leftAside: readonly string[];
}

/** Longer lists are a slip, or somebody's malice. */
const MOST_ROWS = 20_000;
const HEADINGS = new Map(
  [ID_HEADING, ...WARE_COLUMNS.map(({ heading }) => heading)].map((each) => [plain(each), each]),
);

/**
 * Takes a ware list apart: commas, semicolons or tabs between cells; headings in any order, capitals and spaces as she
 * likes.
 *
 * @throws BadInput where the text is no table, or has no column of names
 */
export function wareRows(text: string): WareRows {
  const table = withoutMark(text);
  const [first, ...rest] = cut(table, separatorOf(table));
  if (!first) throw notAList("an empty file");
  const headings = first.cells.map((cell) => HEADINGS.get(plain(cell)) ?? null);
  if (!headings.includes("name") && !headings.includes(ID_HEADING)) {
    throw notAList(`the headings ${first.cells.map((cell) => shown(cell.trim())).join(", ")}`);
  }
  const twice = headings.find((heading, i) => heading !== null && headings.indexOf(heading) !== i);
  if (twice) throw notAList(`the heading ${shown(twice)} twice`);
  if (rest.length > MOST_ROWS) throw notAList(`${rest.length} rows; at most ${MOST_ROWS} will do`);
  const rows = rest
    .filter(({ cells }) => cells.some((cell) => cell.trim() !== ""))
    .map(({ line, cells }) => {
      const known = headings.flatMap((heading, i) => (heading === null ? [] : [[heading, cells[i] ?? ""] as const]));
      return { line, cells: new Map(known.map(([heading, cell]) => [heading, unguarded(cell)])) };
    });
  return { rows, leftAside: first.cells.filter((cell, i) => headings[i] === null && cell.trim() !== "") };
}

function withoutMark(text: string): string {
  return text.replace(/^\uFEFF/, "");
}

function plain(heading: string): string {
  return heading.toLowerCase().replaceAll(/[\s_()-]/g, "");
}

/** The separator that shows most known headings. */
function separatorOf(text: string): string {
  const heading = text.slice(0, Math.max(0, text.search(/[\r\n]|$/)));
  const known = (separator: string): number =>
    heading.split(separator).filter((cell) => HEADINGS.has(plain(cell.replaceAll('"', "")))).length;
  return [",", ";", "\t"].reduce((best, each) => (known(each) > known(best) ? each : best));
}

function cut(text: string, delimiter: string): { line: number; cells: string[] }[] {
  const rows: { line: number; cells: string[] }[] = [];
  try {
    parse(text, {
      delimiter,
      relax_column_count: true,
      skip_empty_lines: true,
      on_record: (cells, { lines }) => {
        // `lines` is where the row ends; it began as many lines before as its cells are broken over.
        rows.push({ line: lines + 1 - cells.join("").split(/\r\n|\r|\n/).length, cells });
        return null;
      },
    });
  } catch (error) {
    throw notAList(`a table that cannot be read (${error instanceof Error ? error.message : String(error)})`);
  }
  return rows;
}

const notAList = (found: string): BadInput =>
  new BadInput({
    code: "not-a-ware-list",
    path: "",
    found,
    expected:
      "a ware list as CSV: a row of headings, among them name, count, diameterMm and heightMm; then a batch a row",
  });
