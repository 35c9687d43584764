import { CONES } from "../../../firing/cones/cone.ts";
import { FIRING_KINDS } from "../../../firing/cones/firing-kind.ts";
import { DUE_STRETCHES } from "../words/due-words.ts";
import { FORMS, STAGES } from "../words/ware-words.ts";
import type { WaitingBatch } from "./waiting-batch.ts";

/** What a list can be narrowed by. "none" stands for a batch that says nothing of it. */
export const FACETS = ["kind", "cone", "due", "stage", "form"] as const;
export type Facet = (typeof FACETS)[number];

/** Which batches she wants to see: of each facet any of the values chosen, or all where none is; and every word typed. */
export interface WareFilter {
  readonly words: string;
  readonly chosen: Readonly<Record<Facet, readonly string[]>>;
}

export const NO_FILTER: WareFilter = { words: "", chosen: { kind: [], cone: [], due: [], stage: [], form: [] } };

const VALUES: Readonly<Record<Facet, readonly string[]>> = {
  kind: [...FIRING_KINDS, "none"],
  cone: [...CONES, "none"],
  due: DUE_STRETCHES,
  stage: STAGES,
  form: [...FORMS, "none"],
};

/** What a batch says of a facet. */
export function facetOf(batch: WaitingBatch, facet: Facet): string {
  if (facet === "kind") return batch.kind ?? "none";
  if (facet === "cone") return batch.cone ?? "none";
  if (facet === "due") return batch.due;
  return facet === "stage" ? batch.record.stage : (batch.record.ware.form ?? "none");
}

/** The batches a filter lets through, in their order. What is finished waits for nothing: it shows only when asked for. */
export function filterWare(batches: readonly WaitingBatch[], filter: WareFilter): WaitingBatch[] {
  const words = wordsOf(filter);
  return batches.filter((batch) => hasWords(batch, words) && FACETS.every((facet) => lets(batch, facet, filter)));
}

/** One value a facet can take. */
export interface FacetValue {
  readonly value: string;
  /** How many batches it would show beside what else is chosen. */
  readonly count: number;
  readonly isChosen: boolean;
}

/** The values of every facet that any batch has, each with its count under the choices made in the other facets. */
export function facetValues(batches: readonly WaitingBatch[], filter: WareFilter): Record<Facet, FacetValue[]> {
  const words = wordsOf(filter);
  const counts = Object.fromEntries(FACETS.map((facet) => [facet, new Map<string, number>()])) as Record<
    Facet,
    Map<string, number>
  >;
  for (const batch of batches) {
    const against = FACETS.filter((facet) => !lets(batch, facet, filter));
    const counted = hasWords(batch, words);
    for (const facet of FACETS) {
      // A finished batch is counted under "finished" alone: nothing else speaks of what no longer waits.
      if (facet !== "stage" && batch.record.stage === "finished" && !filter.chosen.stage.includes("finished")) continue;
      const one = counted && against.every((each) => each === facet) ? 1 : 0;
      const value = facetOf(batch, facet);
      counts[facet].set(value, (counts[facet].get(value) ?? 0) + one);
    }
  }
  return Object.fromEntries(FACETS.map((facet) => [facet, valuesOf(facet, counts[facet], filter)])) as Record<
    Facet,
    FacetValue[]
  >;
}

/** The filter with one value put in, or taken out where it was in. */
export function toggled(filter: WareFilter, facet: Facet, value: string): WareFilter {
  const before = filter.chosen[facet];
  const after = before.includes(value) ? before.filter((each) => each !== value) : [...before, value];
  return { ...filter, chosen: { ...filter.chosen, [facet]: after } };
}

/** True where the filter narrows nothing. */
export const isOpen = (filter: WareFilter): boolean =>
  filter.words.trim() === "" && FACETS.every((facet) => filter.chosen[facet].length === 0);

const wordsOf = ({ words }: WareFilter): string[] => words.toLowerCase().split(/\s+/).filter(Boolean);

const hasWords = (batch: WaitingBatch, words: readonly string[]): boolean =>
  words.every((word) => batch.text.includes(word));

function lets(batch: WaitingBatch, facet: Facet, { chosen }: WareFilter): boolean {
  const values = chosen[facet];
  if (values.length > 0) return values.includes(facetOf(batch, facet));
  return facet !== "stage" || batch.record.stage !== "finished";
}

function valuesOf(facet: Facet, counts: ReadonlyMap<string, number>, filter: WareFilter): FacetValue[] {
  const chosen = filter.chosen[facet];
  return VALUES[facet]
    .filter((value) => counts.has(value) || chosen.includes(value))
    .map((value) => ({ value, count: counts.get(value) ?? 0, isChosen: chosen.includes(value) }));
}
