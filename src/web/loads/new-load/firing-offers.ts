import { type ConeName, conePlace } from "../../../firing/cones/cone.ts";
import { coneOrNull } from "../../../firing/cones/cone-or-null.ts";
import { coneRange } from "../../../firing/cones/cone-range.ts";
import type { FiringKind } from "../../../firing/cones/firing-kind.ts";
import { canShareFiring, type FiringNeed, whyNotAt } from "../../../firing/cones/share-firing.ts";
import { promisedPieces, waitingOf } from "../../../studio/queries/promised.ts";
import type { ClayBodyRecord, GlazeRecord } from "../../../studio/records/clay-and-glaze-records.ts";
import type { LoadRecord } from "../../../studio/records/load-record.ts";
import type { WareRecord } from "../../../studio/records/ware-record.ts";

/** A firing that waiting ware asks for, and what could go into it. */
export interface FiringOffer {
  /** "glaze 6" */
  readonly id: string;
  readonly kind: FiringKind;
  readonly cone: ConeName | null;
  /** Batches that ask for just this firing. */
  readonly batches: readonly WareRecord[];
  /** Batches that could go along: another kind or another cone written on them, and no reason against it. */
  readonly along: readonly WareRecord[];
  readonly pieces: number;
  /** The soonest day anything of it is wanted. */
  readonly dueOn: string | null;
}

/**
 * What waits for a firing: not finished, and not promised to a load already. Of a batch half of which stands in a load, the
 * other half waits: its count is what is left.
 */
export function waitingWare(ware: readonly WareRecord[], loads: readonly LoadRecord[]): WareRecord[] {
  const promised = promisedPieces(loads);
  return ware.filter(wantsFiring).flatMap((batch) => {
    const { waits } = waitingOf(batch.ware.count, promised.get(batch.id));
    if (waits === 0) return [];
    return [waits === batch.ware.count ? batch : { ...batch, ware: { ...batch.ware, count: waits } }];
  });
}

/** Whether a batch is to be fired at all. */
export const wantsFiring = ({ stage, firingKind }: WareRecord): boolean => stage !== "finished" && firingKind !== null;

/**
 * The firings that waiting ware asks for, the soonest wanted first, then the fullest.
 *
 * @param ware batches that wait
 */
export function firingOffers(
  ware: readonly WareRecord[],
  bodies: readonly ClayBodyRecord[],
  glazes: readonly GlazeRecord[],
): FiringOffer[] {
  const needs = new Map(ware.map((batch) => [batch.id, needOf(batch, bodies, glazes)]));
  const groups = new Map<string, WareRecord[]>();
  for (const batch of ware) {
    const key = `${batch.firingKind} ${coneOf(batch) ?? ""}`;
    groups.set(key, [...(groups.get(key) ?? []), batch]);
  }
  return [...groups]
    .map(([id, batches]): FiringOffer => {
      const [first] = batches as [WareRecord];
      const cone = coneOf(first);
      const members = new Set(batches);
      const own = batches.flatMap((batch) => needs.get(batch.id) ?? []);
      return {
        id: id.trim(),
        kind: first.firingKind as FiringKind,
        cone,
        batches,
        along: ware.filter((batch) => !members.has(batch) && goesAlong(needs.get(batch.id) ?? null, own, cone)),
        pieces: batches.reduce((sum, batch) => sum + batch.ware.count, 0),
        dueOn: batches.flatMap(({ dueOn }) => dueOn ?? []).sort()[0] ?? null,
      };
    })
    .sort(bySoonest);
}

/** The offer that most of some chosen batches belong to, or null where none do. */
export function offerFor(offers: readonly FiringOffer[], chosen: ReadonlySet<string>): FiringOffer | null {
  const of = (offer: FiringOffer): number => offer.batches.filter(({ id }) => chosen.has(id)).length;
  const [best] = [...offers].sort((a, b) => of(b) - of(a));
  return best && of(best) > 0 ? best : null;
}

/** The cone written on a batch; null where none is. */
export const coneOf = ({ ware }: WareRecord): ConeName | null => coneOrNull(ware.cone);

function needOf(
  batch: WareRecord,
  bodies: readonly ClayBodyRecord[],
  glazes: readonly GlazeRecord[],
): FiringNeed | null {
  const { firingKind: kind, ware } = batch;
  if (kind === null) return null;
  const body = bodies.find(({ id }) => id === batch.clayBodyId);
  const glaze = glazes.find(({ id }) => id === batch.glazeId);
  const cone = coneOf(batch);
  // The cone written on the batch is her word; else what is known of its glaze.
  const cones = cone ? coneRange(cone) : glaze?.cones;
  return {
    name: ware.name,
    kind,
    glaze: cones ? { name: glaze?.name ?? (ware.glaze || "its glaze"), cones } : undefined,
    body: body?.cones ? { name: body.name, cones: body.cones } : undefined,
  };
}

function goesAlong(need: FiringNeed | null, others: readonly FiringNeed[], cone: ConeName | null): boolean {
  if (need === null || cone === null || whyNotAt(need, cone) !== null) return false;
  return others.every((other) => canShareFiring(need, other).can);
}

function bySoonest(a: FiringOffer, b: FiringOffer): number {
  if (a.dueOn !== b.dueOn) return (a.dueOn ?? "9999").localeCompare(b.dueOn ?? "9999");
  return b.pieces - a.pieces || placeOf(b) - placeOf(a) || a.id.localeCompare(b.id);
}

const placeOf = ({ cone }: FiringOffer): number => (cone ? conePlace(cone) : -1);
