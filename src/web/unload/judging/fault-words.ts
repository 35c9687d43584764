import { FAULTS, type FaultName } from "../../../studio/records/faults.ts";

// The faults as potters know them. What each looks like: trade knowledge, from memory (Dodd & Murfin, Dictionary of
// Ceramics, for crawling, crazing, shivering, dunting, bloating and black core; the rest common practice, no source).

/** What a fault looks like on the piece, in a line. */
export const FAULT_LOOKS: Readonly<Record<FaultName, string>> = {
  crawling: "Glaze drawn back in beads, bare clay between",
  pinholes: "Tiny holes through the glaze",
  blisters: "Bubbles and craters, some with sharp rims",
  running: "Glaze has flowed down to the foot, or over it",
  crazing: "A net of fine cracks in the glaze alone",
  shivering: "Glaze flakes off at rims and edges, sharp",
  "under-fired": "Dry, rough or milky where it should be melted",
  "over-fired": "Too glossy, too thin, its colour burnt out",
  colour: "Another colour or sheen than it should have",
  dunting: "A clean crack right through clay and glaze",
  "drying crack": "A rough crack that was there before the fire",
  burst: "Blown apart, or a piece blown off",
  bloating: "Blisters in the clay itself",
  warping: "Out of true: rim oval, base lifted",
  "black core": "A dark heart where it is broken",
  "kiln debris": "Brick, wash or dust on the glaze",
  stuck: "Held fast by the shelf or a neighbour",
  chipped: "A chip, from setting, lifting or grinding",
  other: "Say in the note what it is",
};

/** A fault as a button says it. */
export const FAULT_NAMES: Readonly<Partial<Record<FaultName, string>>> = {
  stuck: "stuck to the shelf",
  colour: "wrong colour",
  other: "something else",
};

export const faultName = (fault: FaultName): string => FAULT_NAMES[fault] ?? fault;

/** Faults that only a glaze has. */
const OF_GLAZE: ReadonlySet<FaultName> = new Set([
  "crawling",
  "pinholes",
  "blisters",
  "running",
  "crazing",
  "shivering",
  "colour",
]);

/** Every fault, in two parts: those such a firing may show first. A bisque firing has no glaze to go wrong. */
export function faultsFor(kind: string | undefined): { readonly first: FaultName[]; readonly others: FaultName[] } {
  const isBare = kind === "bisque";
  return {
    first: FAULTS.filter((fault) => !(isBare && OF_GLAZE.has(fault))),
    others: FAULTS.filter((fault) => isBare && OF_GLAZE.has(fault)),
  };
}
