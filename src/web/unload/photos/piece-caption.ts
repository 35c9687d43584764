import type { FiredPiece } from "../judging/pieces.ts";

/** What a photo of a piece begins its caption with: it is of the firing, and says there which piece it shows. */
export const captionOf = ({ level, number, name }: Pick<FiredPiece, "level" | "number" | "name">): string =>
  `Shelf ${level + 1}, piece ${number}: ${name}`.slice(0, 2000);

/** Whether a caption is of a photo of that piece; she may have written more after it. */
export const isOfPiece = (caption: string, piece: Pick<FiredPiece, "level" | "number" | "name">): boolean =>
  caption === captionOf(piece) || caption.startsWith(`${captionOf(piece)};`);
