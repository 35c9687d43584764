import { alternativesId } from "../../../studio/queries/promised.ts";
import type { LoadRecord, LoadState } from "../../../studio/records/load-record.ts";

/** Loads that are tries at the same firing: the first, and its alternatives. */
export interface LoadFamily {
  readonly id: string;
  /** The first, then the alternatives in the order they were made. */
  readonly loads: readonly LoadRecord[];
}

/** Loads that have come equally far. */
export interface LoadGroup {
  readonly state: LoadState;
  readonly families: readonly LoadFamily[];
}

/** What has her hands on it comes first, what is long done last. */
const ORDER: readonly LoadState[] = ["loading", "loaded", "planned", "fired", "unpacked"];

export const STATE_WORDS: Readonly<Record<LoadState, string>> = {
  planned: "Planned",
  loading: "Being loaded",
  loaded: "Loaded, to be fired",
  fired: "Fired, to be unpacked",
  unpacked: "Unpacked",
};

/** Loads grouped by how far they have come, alternatives together, the newest first. Groups without loads are left out. */
export function loadGroups(loads: readonly LoadRecord[]): LoadGroup[] {
  return ORDER.flatMap((state) => {
    const here = loads.filter((load) => load.state === state);
    if (here.length === 0) return [];
    const families = new Map<string, LoadRecord[]>();
    for (const load of [...here].sort(firstOfItsOwnFirst)) {
      families.set(alternativesId(load), [...(families.get(alternativesId(load)) ?? []), load]);
    }
    const newestFirst = [...families].map(([id, members]) => ({ id, loads: members })).sort(byNewest);
    return [{ state, families: newestFirst }];
  });
}

/** Every try at the same firing that is still only planned, the first one first; at least the load itself. */
export function tries(loads: readonly LoadRecord[], load: LoadRecord): LoadRecord[] {
  return loads
    .filter(
      (each) => alternativesId(each) === alternativesId(load) && (each.state === "planned" || each.id === load.id),
    )
    .sort(firstOfItsOwnFirst);
}

/** What a load may become next, and what that is called on a button. */
export const NEXT_STATE: Readonly<Record<LoadState, { readonly state: LoadState; readonly name: string } | null>> = {
  planned: { state: "loading", name: "Start loading" },
  loading: { state: "loaded", name: "It is loaded" },
  loaded: { state: "fired", name: "It is fired" },
  fired: { state: "unpacked", name: "Unpack" },
  unpacked: null,
};

function firstOfItsOwnFirst(a: LoadRecord, b: LoadRecord): number {
  const first = Number(a.id !== alternativesId(a)) - Number(b.id !== alternativesId(b));
  return first || a.createdAt.localeCompare(b.createdAt) || a.id.localeCompare(b.id);
}

function byNewest(a: LoadFamily, b: LoadFamily): number {
  const newest = ({ loads }: LoadFamily): string =>
    loads
      .map(({ changedAt }) => changedAt)
      .sort()
      .at(-1) ?? "";
  return newest(b).localeCompare(newest(a)) || a.id.localeCompare(b.id);
}
