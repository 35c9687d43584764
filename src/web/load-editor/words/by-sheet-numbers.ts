import type { SheetLoad } from "../../../sheets/sheet-load.ts";

const IN_THE_PLAN = /\(level (\d+), piece (\d+)\)/g;

/**
 * A rule's sentence with pieces numbered as they are drawn here and on the printed sheet. The checker counts them as they
 * stand in the plan's file, which she never sees.
 */
export function bySheetNumbers(message: string, { levels }: SheetLoad): string {
  return message.replace(IN_THE_PLAN, (was, level: string, piece: string) => {
    const on = levels[Number(level) - 1];
    const found = on?.pieces.find((each) => each.piece.placement === Number(piece) - 1);
    return found ? `(level ${level}, number ${found.number})` : was;
  });
}
