import type { Ware } from "../../../ware/ware.ts";

/** How many colours and signs there are; beyond it a colour comes again with another sign. */
export const COLOURS = 6;
export const SIGNS = 7;

/** What pieces are told apart by in the drawings: a glaze, or where a piece has none its kind. */
export interface KindSign {
  readonly name: string;
  readonly colour: number;
  readonly sign: number;
}

/** What a piece is grouped by. */
export const signName = (ware: Pick<Ware, "glaze" | "name">): string => ware.glaze?.trim() || ware.name;

/**
 * A colour and a sign for each glaze of a load, in the order the pieces come. The two go round at different lengths, so
 * that no two of the first forty-two share both.
 */
export function kindSigns(ware: readonly Pick<Ware, "glaze" | "name">[]): Map<string, KindSign> {
  const signs = new Map<string, KindSign>();
  for (const each of ware) {
    const name = signName(each);
    if (!signs.has(name)) signs.set(name, { name, colour: signs.size % COLOURS, sign: signs.size % SIGNS });
  }
  return signs;
}

/** Each sign within a square two wide about its middle. */
export const SIGN_PATHS: readonly string[] = [
  "M-1 0a1 1 0 1 0 2 0a1 1 0 1 0-2 0Z",
  "M-1-1H1V1H-1Z",
  "M0-1.1L1.1 1H-1.1Z",
  "M-1.2-.35H1.2V.35H-1.2Z",
  "M0-1.3L1.1 0L0 1.3L-1.1 0Z",
  "M-.35-1.2H.35V-.35H1.2V.35H.35V1.2H-.35V.35H-1.2V-.35H-.35Z",
  "M0 1.1L-1.1-1H1.1Z",
];
