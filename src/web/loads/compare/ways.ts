import type { LoadRequestFile } from "../../../loading/load-request.ts";

/** What another way should bring most of. */
export const WAYS = ["again", "most", "large", "due"] as const;
export type Way = (typeof WAYS)[number];

export const WAY_WORDS: Readonly<Record<Way, { readonly label: string; readonly suffix: string }>> = {
  again: { label: "Look again from another start", suffix: "again" },
  most: { label: "As many pieces as go in", suffix: "most pieces" },
  large: { label: "Large pieces first", suffix: "large first" },
  due: { label: "What is wanted soonest first", suffix: "soonest first" },
};

/** How much more the soonest wanted weighs than what nobody waits for. */
const SOONEST_WEIGHS = 10;

/**
 * The request with its pieces weighed for another way; the same request where nothing is weighed otherwise.
 *
 * @param dueOn when each kind is wanted, where anybody waits for it
 */
export function weighedFor(way: Way, request: LoadRequestFile, dueOn: ReadonlyMap<string, string>): LoadRequestFile {
  if (way === "again") return request;
  const days = [...new Set(dueOn.values())].sort();
  const weigh = (ware: LoadRequestFile["ware"][number]): number => {
    if (way === "most") return 1;
    // In litres: a plate of half a litre, a platter of three, a tall vase of ten.
    if (way === "large") return Math.max(0.01, (ware.diameterMm ** 2 * ware.heightMm) / 1e6);
    const day = dueOn.get(ware.name);
    const place = day === undefined ? days.length : days.indexOf(day);
    const share = days.length === 0 ? 0 : 1 - place / days.length;
    return (ware.value ?? 1) * (1 + (SOONEST_WEIGHS - 1) * share);
  };
  return { ...request, ware: request.ware.map((ware) => ({ ...ware, value: Math.round(weigh(ware) * 1000) / 1000 })) };
}

/** A name for another way that no load has yet: "Glaze, cone 6, most pieces". */
export function wayName(name: string, way: Way, taken: readonly string[]): string {
  const base = `${name.slice(0, 90)}, ${WAY_WORDS[way].suffix}`;
  let tried = base;
  for (let number = 2; taken.includes(tried); number += 1) tried = `${base} ${number}`;
  return tried;
}
