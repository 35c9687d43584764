/** A record, of whatever kind. */
export type Kept = { readonly id: string };

/**
 * A list after some of its records were put in, changed or taken out (null). Those that were there keep their place; new
 * ones go to the end, as the newest. The same list where nothing in it is another.
 */
export function listAfter<Item extends Kept>(
  list: readonly Item[],
  changed: Readonly<Record<string, Item | null>>,
): readonly Item[] {
  const ids = new Set(list.map(({ id }) => id));
  const stayed = list.flatMap((item) => {
    const now = changed[item.id];
    return now === undefined ? [item] : now === null ? [] : [now];
  });
  const added = Object.values(changed).filter((item): item is Item => item !== null && !ids.has(item.id));
  const same = added.length === 0 && stayed.length === list.length && stayed.every((item, i) => item === list[i]);
  return same ? list : [...stayed, ...added];
}
