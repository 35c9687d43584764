// A spreadsheet runs a cell that begins like a formula; a name typed by somebody else must not. Which beginnings, and the
// apostrophe before them: OWASP, "CSV Injection" (owasp.org/www-community/attacks/CSV_Injection); the wide signs because
// some spreadsheets take them for the narrow ones. Text that begins with apostrophes of its own gets one more.
const FORMULA = /^'*[=+\-@\t\r\n＝＋－＠]/;
const GUARDED = /^'+[=+\-@\t\r\n＝＋－＠]/;

/** Text as a cell that no spreadsheet takes for a formula. */
export const guarded = (text: string): string => (FORMULA.test(text) ? `'${text}` : text);

/** The text that was guarded; other text as it is. */
export const unguarded = (cell: string): string => (GUARDED.test(cell) ? cell.slice(1) : cell);

/** A cell between quotes where it needs them (RFC 4180, 2.6 and 2.7). */
export const quoted = (cell: string): string =>
  /[",;\t\r\n]|^\s|\s$/.test(cell) ? `"${cell.replaceAll('"', '""')}"` : cell;
