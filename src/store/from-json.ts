import { shown } from "../measures/bad-input.ts";
import { corruptRow } from "../studio/records/refusals.ts";

/** What a cell of JSON text holds. @throws BadInput `corrupt-row` */
export function fromJson(cell: unknown, path: string): unknown {
  try {
    return JSON.parse(String(cell));
  } catch {
    throw corruptRow(path, shown(cell), "JSON");
  }
}
