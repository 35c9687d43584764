// How the batches chosen here come to the screen that makes a load of them.

const KEPT_UNDER = "wareboard-chosen-for-load";
/** More ids than this would make an address longer than some servers take. */
const MOST_IN_ADDRESS = 40;

/** The address of a new load of these batches. Many of them are kept in this tab instead of the address. */
export function newLoadAddress(ids: readonly string[]): string {
  if (ids.length <= MOST_IN_ADDRESS) return `/loads?new=1&ware=${ids.join(",")}`;
  try {
    sessionStorage.setItem(KEPT_UNDER, JSON.stringify(ids));
    return "/loads?new=1&ware=chosen";
  } catch {
    // A tab that keeps nothing: a long address is better than none.
    return `/loads?new=1&ware=${ids.join(",")}`;
  }
}

/** The batches an address speaks of; none where it speaks of none. */
export function chosenForLoad(search: string): string[] {
  const ware = new URLSearchParams(search).get("ware") ?? "";
  if (ware !== "chosen") return ware.split(",").filter(Boolean);
  try {
    const kept: unknown = JSON.parse(sessionStorage.getItem(KEPT_UNDER) ?? "[]");
    return Array.isArray(kept) ? kept.filter((id) => typeof id === "string") : [];
  } catch {
    return [];
  }
}
