// SQLite takes at most 32,766 parameters in a statement (sqlite.org/limits.html, 9), PostgreSQL 65,535.
const MOST_PARAMETERS = 30_000;
const MOST_ROWS = 1000;

/** Cuts a list into parts small enough for one statement, each item taking so many parameters. */
export function inParts<Item>(items: readonly Item[], parametersEach: number): Item[][] {
  const most = Math.min(MOST_ROWS, Math.floor(MOST_PARAMETERS / parametersEach));
  const parts: Item[][] = [];
  for (let from = 0; from < items.length; from += most) parts.push(items.slice(from, from + most));
  return parts;
}
