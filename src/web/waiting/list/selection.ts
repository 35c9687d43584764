/** The batches she has chosen, and where a stretch of them would begin. */
export interface Selection {
  readonly ids: ReadonlySet<string>;
  /** The one pressed last; with shift held, the next press chooses all between. */
  readonly anchor: string | null;
}

export const NOTHING_CHOSEN: Selection = { ids: new Set(), anchor: null };

/** One batch put in, or taken out where it was in. */
export function toggleOne({ ids }: Selection, id: string): Selection {
  const after = new Set(ids);
  if (!after.delete(id)) after.add(id);
  return { ids: after, anchor: id };
}

/** Everything shown between the anchor and this batch, put in. Without an anchor in sight it is one press like any other. */
export function chooseThrough(selection: Selection, id: string, shown: readonly string[]): Selection {
  const from = selection.anchor === null ? -1 : shown.indexOf(selection.anchor);
  const to = shown.indexOf(id);
  if (from < 0 || to < 0) return toggleOne(selection, id);
  const stretch = shown.slice(Math.min(from, to), Math.max(from, to) + 1);
  return { ids: new Set([...selection.ids, ...stretch]), anchor: id };
}

/** These and no others. */
export const chooseOnly = (ids: readonly string[]): Selection => ({ ids: new Set(ids), anchor: ids.at(-1) ?? null });

/** Without what is gone meanwhile; the same object where nothing is. */
export function stillThere(selection: Selection, there: ReadonlySet<string>): Selection {
  const ids = [...selection.ids].filter((id) => there.has(id));
  return ids.length === selection.ids.size ? selection : { ids: new Set(ids), anchor: selection.anchor };
}
