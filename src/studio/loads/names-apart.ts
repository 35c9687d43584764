import type { GlazeRecord } from "../records/clay-and-glaze-records.ts";
import type { WareRecord } from "../records/ware-record.ts";

const LONGEST_NAME = 120;

/** What a batch is called in a load, and a sentence where that is not what she calls it. */
export interface NamesApart {
  readonly names: ReadonlyMap<string, string>;
  readonly notes: readonly string[];
}

/**
 * Gives every batch of a load a name of its own, since a load tells its pieces apart by name: batches she calls alike
 * are called by what differs between them, else numbered.
 *
 * @param taken names that stay as they are, by the batch's id
 */
export function namesApart(
  ware: readonly WareRecord[],
  glazes: readonly GlazeRecord[] = [],
  taken: ReadonlyMap<string, string> = new Map(),
): NamesApart {
  const names = new Map(taken);
  const used = new Set(taken.values());
  const notes: string[] = [];
  const fresh = ware.filter(({ id }) => !taken.has(id));
  for (const [name, batches] of grouped(fresh)) {
    const alone = batches.length === 1 && !used.has(name);
    const parts = alone ? [] : differing(batches, glazes);
    const given = batches.map((batch, i) => {
      const wanted = alone ? name : shortened(name, parts[i] ?? "");
      const own = firstFree(wanted, used);
      used.add(own);
      names.set(batch.id, own);
      return own;
    });
    if (!alone)
      notes.push(`Several batches are called ${name}; in this load they are ${inARow(given).replace(/\.$/, "")}.`);
  }
  return { names, notes };
}

function grouped(ware: readonly WareRecord[]): Map<string, WareRecord[]> {
  const groups = new Map<string, WareRecord[]>();
  for (const batch of ware) groups.set(batch.ware.name, [...(groups.get(batch.ware.name) ?? []), batch]);
  return groups;
}

/** What tells batches of one name apart: the first of these that is another for each of them. */
function differing(batches: readonly WareRecord[], glazes: readonly GlazeRecord[]): string[] {
  const glazeOf = ({ glazeId, ware }: WareRecord): string =>
    glazes.find(({ id }) => id === glazeId)?.name ?? ware.glaze ?? "";
  const tellings: ((batch: WareRecord) => string)[] = [
    glazeOf,
    ({ ware }) => (ware.cone ? `cone ${ware.cone}` : ""),
    ({ ware }) => `${round(ware.diameterMm)} × ${round(ware.heightMm)} mm`,
    ({ dueOn }) => (dueOn === null ? "" : `for ${dueOn}`),
    ({ stage }) => stage,
  ];
  for (const telling of tellings) {
    const told = batches.map(telling);
    if (batches.length > 1 && told.every((each) => each !== "") && new Set(told).size === told.length) return told;
  }
  return [];
}

const round = (mm: number): number => Math.round(mm);

const shortened = (name: string, part: string): string =>
  part === ""
    ? name
    : `${name.slice(0, Math.max(1, LONGEST_NAME - 12 - part.length))}, ${part}`.slice(0, LONGEST_NAME - 8);

function firstFree(wanted: string, used: ReadonlySet<string>): string {
  if (!used.has(wanted)) return wanted;
  for (let n = 2; ; n++) {
    const numbered = `${wanted.slice(0, LONGEST_NAME - 8)}, ${n}`;
    if (!used.has(numbered)) return numbered;
  }
}

const inARow = (names: readonly string[]): string =>
  names.length < 2 ? (names[0] ?? "") : `${names.slice(0, -1).join("; ")} and ${names.at(-1)}`;
