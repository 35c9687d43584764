import { formatLength, type LengthUnits } from "../../../measures/length.ts";
import type { NumberedPiece } from "../../../sheets/sheet-load.ts";

/** Where a piece stands, as it is told to who cannot see it: "3, bowl, 4 o’clock, 120 mm from the middle". */
export function standingWords({ number, piece, direction }: NumberedPiece, units: LengthUnits): string {
  return `${number}, ${piece.ware.name}, ${whereWords(piece, direction, units)}`;
}

/** "4 o’clock, 120 mm from the middle" or "in the middle". */
export function whereWords(
  { x, y }: { readonly x: number; readonly y: number },
  direction: string,
  units: LengthUnits,
): string {
  if (direction === "the middle") return "in the middle";
  return `${direction}, ${formatLength(Math.round(Math.hypot(x, y)), units)} from the middle`;
}

/** "1 piece", "3 pieces". */
export const piecesWords = (count: number): string => (count === 1 ? "1 piece" : `${count} pieces`);
