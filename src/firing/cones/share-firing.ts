import { type ConeName, conePlace } from "./cone.ts";
import { type ConeRange, formatConeRange, isInRange, sharedRange } from "./cone-range.ts";
import { type FiringKind, usualCones } from "./firing-kind.ts";

/** What a piece asks of a firing. */
export interface FiringNeed {
  /** The piece, for the sentence that says why it must wait. */
  readonly name: string;
  readonly kind: FiringKind;
  /** The glaze on it and the cones it melts well at; for a bisque, the cones wanted. */
  readonly glaze?: { readonly name: string; readonly cones: ConeRange } | undefined;
  /** The clay body and the cones it matures at: hotter, it bloats and slumps; cooler, it stays open. */
  readonly body?: { readonly name: string; readonly cones: ConeRange } | undefined;
}

export type Sharing =
  | { readonly can: true; readonly cones: ConeRange; readonly notes: readonly string[] }
  | { readonly can: false; readonly why: string };

/**
 * The cones a piece may be fired to: its glaze's, or those usual for its kind, and none hotter than its body bears.
 *
 * @returns null where glaze and body have no cone in common
 */
export function conesFor({ kind, glaze, body }: FiringNeed): ConeRange | null {
  const wanted =
    glaze?.cones ?? (kind === "glaze" || kind === "once-fired" ? body?.cones : undefined) ?? usualCones(kind);
  return body ? sharedRange(wanted, { coolest: "022", hottest: body.cones.hottest }) : wanted;
}

/** Whether two pieces can go through one firing, and at which cones; or why they cannot. */
export function canShareFiring(a: FiringNeed, b: FiringNeed): Sharing {
  for (const piece of [a, b]) if (conesFor(piece) === null) return { can: false, why: whyAlone(piece) };
  const [forA, forB] = [conesFor(a), conesFor(b)] as [ConeRange, ConeRange];
  const cones = sharedRange(forA, forB);
  if (cones === null) {
    const why = `${a.name} needs ${formatConeRange(forA)}${because(a)}, ${b.name} ${formatConeRange(forB)}${because(b)}.`;
    return { can: false, why };
  }
  const lustre = [a, b].find((piece) => piece.kind === "lustre");
  const raw = [a, b].find((piece) => isRaw(piece));
  if (lustre && raw) {
    const why = `${raw.name} is raw clay and gives off water and gas; ${lustre.name} needs clean air for its lustre.`;
    return { can: false, why };
  }
  return { can: true, cones, notes: notesOn(a, b, cones) };
}

/**
 * Why a piece cannot be fired to a cone, in a sentence; null where it can.
 */
export function whyNotAt(piece: FiringNeed, cone: ConeName): string | null {
  const cones = conesFor(piece);
  if (cones === null) return whyAlone(piece);
  if (isInRange(cone, cones)) return null;
  const hotter = conePlace(cone) > conePlace(cones.hottest);
  return `${piece.name} needs ${formatConeRange(cones)}${because(piece)}; cone ${cone} is too ${hotter ? "hot" : "cool"}.`;
}

const isRaw = ({ kind }: FiringNeed): boolean => kind === "bisque" || kind === "once-fired";

const because = ({ glaze, body }: FiringNeed): string => {
  const reasons = [glaze?.name, body?.name].filter((name) => name !== undefined);
  return reasons.length === 0 ? "" : ` (${reasons.join(" on ")})`;
};

const whyAlone = ({ name, glaze, body }: FiringNeed): string =>
  `${name}: ${glaze?.name ?? "its glaze"} needs ${glaze ? formatConeRange(glaze.cones) : "other cones"}, hotter than ${
    body?.name ?? "its body"
  } bears (${body ? formatConeRange(body.cones) : ""}). No firing suits both.`;

function notesOn(a: FiringNeed, b: FiringNeed, cones: ConeRange): string[] {
  const notes: string[] = [];
  if (isRaw(a) !== isRaw(b)) {
    const [raw, glazed] = isRaw(a) ? [a, b] : [b, a];
    notes.push(
      `Fire slowly, for ${raw.name} is raw; its gases can spoil the glaze of ${glazed.name} (common practice, no source).`,
    );
  }
  for (const { name, body } of [a, b]) {
    if (body && conePlace(cones.hottest) < conePlace(body.cones.coolest)) {
      notes.push(`${name}: ${body.name} matures at ${formatConeRange(body.cones)} and stays porous below.`);
    }
  }
  return notes;
}
