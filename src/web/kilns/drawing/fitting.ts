import type { KilnFile, Probe, Spyhole } from "../../../kiln/kiln.ts";
import { wrapDegrees } from "../../../measures/angle.ts";

/** Something in the kiln's wall, by its kind and place in the list. */
export interface Fitting {
  readonly kind: "probe" | "spyhole";
  readonly index: number;
}

/** A place on the wall: round it, and up it. */
export interface WallPlace {
  readonly angleDeg: number;
  readonly heightMm: number;
}

export const isSame = (a: Fitting | null, b: Fitting | null): boolean => a?.kind === b?.kind && a?.index === b?.index;

/** The probe or spyhole meant, or undefined where it is gone. */
export const fittingOf = (kiln: KilnFile, { kind, index }: Fitting): Probe | Spyhole | undefined =>
  (kind === "probe" ? kiln.probes : kiln.spyholes)?.[index];

/** Every fitting of a kiln, probes first. */
export const fittingsOf = (kiln: KilnFile): Fitting[] => [
  ...(kiln.probes ?? []).map((_, index): Fitting => ({ kind: "probe", index })),
  ...(kiln.spyholes ?? []).map((_, index): Fitting => ({ kind: "spyhole", index })),
];

/** The kiln with a fitting moved along its wall; the height stays inside. */
export function withFittingAt(kiln: KilnFile, fitting: Fitting, to: Partial<WallPlace>): KilnFile {
  const move = <Thing extends WallPlace>(thing: Thing, index: number): Thing => {
    if (index !== fitting.index) return thing;
    const heightMm = Math.min(kiln.chamber.depthMm, Math.max(0, to.heightMm ?? thing.heightMm));
    return { ...thing, angleDeg: wrapDegrees(to.angleDeg ?? thing.angleDeg), heightMm };
  };
  return fitting.kind === "probe"
    ? { ...kiln, probes: (kiln.probes ?? []).map(move) }
    : { ...kiln, spyholes: (kiln.spyholes ?? []).map(move) };
}
