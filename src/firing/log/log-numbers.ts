/** How a column writes its decimals. */
export type DecimalMark = "." | ",";

/** A space, narrow or not, or an apostrophe may stand between thousands. */
const NUMBER = /^[-+−]?(?:\d[\d.,'’\s]*\d|\d)$/u;

/**
 * Which mark a column's numbers use for decimals. A mark always followed by exactly three digits, and missing from
 * the smaller numbers, groups thousands: 998 then 1,001.
 */
export function decimalMarkOf(cells: readonly string[]): DecimalMark {
  const numbers = cells.filter((cell) => NUMBER.test(cell));
  const withComma = numbers.filter((cell) => cell.includes(","));
  if (withComma.length === 0) {
    const withPoint = numbers.filter((cell) => cell.includes("."));
    return groupsThousands(withPoint, numbers, ".") ? "," : ".";
  }
  // Both marks in one number: the last one is the decimal.
  const both = withComma.find((cell) => cell.includes("."));
  if (both) return both.lastIndexOf(",") > both.lastIndexOf(".") ? "," : ".";
  return groupsThousands(withComma, numbers, ",") ? "." : ",";
}

/** The hottest number a log can hold, °F: a "thousand" above it is a decimal after all. */
const LARGEST = 3300;

function groupsThousands(marked: readonly string[], all: readonly string[], mark: string): boolean {
  if (marked.length === 0) return false;
  const grouped = marked.every(
    (cell) => /^[-+−]?\d{1,3}[.,]\d{3}$/.test(cell) && Number(cell.replace(mark, "")) <= LARGEST,
  );
  const plain = all.filter((cell) => !cell.includes(mark));
  return grouped && plain.length > 0 && plain.every((cell) => Math.abs(Number(cell)) < 1000);
}

/** A number as an instrument writes it; NaN for anything else. */
export function readNumber(cell: string, mark: DecimalMark): number {
  if (!NUMBER.test(cell)) return Number.NaN;
  const other = mark === "." ? /[,'’\s]/gu : /[.'’\s]/gu;
  return Number(cell.replace("−", "-").replaceAll(other, "").replace(",", "."));
}
