import type { FiringRecord } from "../records/firing-record.ts";
import type { KilnRecord } from "../records/kiln-record.ts";
import type { UpkeepRecord, UpkeepWork } from "../records/upkeep-record.ts";
import { type ElementWear, elementWear } from "./element-wear.ts";

const HOUR_MS = 3_600_000;

/** How long a part has served: since it was changed, or since the first firing kept here. */
export interface PartAge {
  /** When it was changed; null where it never was, here. */
  readonly changedAt: string | null;
  readonly firings: number;
  /** Hours from switching on to shut-off, summed. */
  readonly hours: number;
}

/** Something that should be seen to. */
export interface Reminder {
  readonly what: string;
  readonly because: string;
  readonly source: string;
  readonly when: "now" | "soon";
}

/** A kiln's book of upkeep read. */
export interface UpkeepDue {
  readonly all: PartAge;
  readonly elements: PartAge & { readonly wear: ElementWear };
  readonly probe: PartAge;
  readonly relay: PartAge;
  readonly shelves: {
    readonly of: number;
    /** How many were washed, turned, cracked, in all. */
    readonly washed: number;
    readonly turned: number;
    readonly cracked: number;
    readonly firingsSinceWash: number;
    readonly firingsSinceTurn: number;
  };
  readonly reminders: readonly Reminder[];
}

// When a part is looked at. Common practice, no source: parts differ, and the kiln's own manual goes first.
const PROBE_FIRINGS = 100;
const RELAY_FIRINGS = 150;
const WASH_FIRINGS = 12;
const MEASURE_FIRINGS = 25;
const FEW_FIRINGS = 15;
const COMMON = "common practice, no source; the kiln’s own manual goes first";

/**
 * What a kiln's upkeep says: how long each part has served, how its elements wear and how many firings that leaves, and
 * what should be seen to.
 *
 * @param limitShare the rise of resistance that ends the elements, as a share (`stillClimbs` reckons it for a load);
 *   the usual tenth of the power where it is not given
 */
export function upkeepDue(
  kiln: KilnRecord,
  upkeep: readonly UpkeepRecord[],
  firings: readonly FiringRecord[],
  limitShare?: number,
): UpkeepDue {
  const book = upkeep.filter((each) => each.kilnId === kiln.id).sort((a, b) => (a.at < b.at ? -1 : 1));
  const fired = firings.filter((each) => each.kilnId === kiln.id && each.startedAt !== null);
  const lastAt = (what: UpkeepWork): string | null => book.findLast((each) => each.what === what)?.at ?? null;
  const age = (changedAt: string | null): PartAge => {
    const since = fired.filter(({ startedAt }) => changedAt === null || (startedAt ?? "") > changedAt);
    return { changedAt, firings: since.length, hours: since.reduce((sum, each) => sum + hoursOn(each), 0) };
  };
  const elements = age(lastAt("elements changed"));
  const wear = elementWear(book, fired, limitShare);
  const counted = (what: UpkeepWork): number =>
    book.reduce((sum, each) => sum + (each.what === what ? (each.count ?? 1) : 0), 0);
  const due = {
    all: age(null),
    elements: { ...elements, wear },
    probe: age(lastAt("probe changed")),
    relay: age(lastAt("relay changed")),
    shelves: {
      of: kiln.furniture.shelves.reduce((sum, { count }) => sum + count, 0),
      ...{ washed: counted("shelf washed"), turned: counted("shelf turned"), cracked: counted("shelf cracked") },
      firingsSinceWash: age(lastAt("shelf washed")).firings,
      firingsSinceTurn: age(lastAt("shelf turned")).firings,
    },
  };
  const sinceMeasured = age(lastAt("element resistance")).firings;
  return { ...due, reminders: reminders(due, sinceMeasured) };
}

/** From switching on to shut-off; as foretold where its shut-off was not written down. */
function hoursOn({ startedAt, shutOffAt, foretold }: FiringRecord): number {
  if (startedAt === null) return 0;
  return shutOffAt === undefined ? (foretold?.hours ?? 0) : (Date.parse(shutOffAt) - Date.parse(startedAt)) / HOUR_MS;
}

function reminders(
  { elements, probe, relay, shelves }: Omit<UpkeepDue, "reminders">,
  sinceMeasured: number,
): Reminder[] {
  const found: Reminder[] = [];
  const remind = (when: Reminder["when"], what: string, because: string, source = COMMON): void => {
    found.push({ what, because, source, when });
  };
  const { remainingFirings, limit, powerLeft } = elements.wear;
  if (remainingFirings !== null && remainingFirings.expected <= FEW_FIRINGS) {
    const when = remainingFirings.expected <= 3 ? "now" : "soon";
    const percent = Math.round(100 * (1 - (powerLeft ?? 1)));
    const left = Math.max(0, Math.round(remainingFirings.expected));
    remind(
      when,
      "Have new elements ready",
      `${percent} % of the power is gone; at this pace about ${left} firings are left.`,
      limit.source,
    );
  }
  if (sinceMeasured >= MEASURE_FIRINGS) {
    remind("soon", "Measure the elements", `${sinceMeasured} firings since they were measured, or ever.`);
  }
  if (probe.firings >= PROBE_FIRINGS) {
    remind(
      "soon",
      "Compare the probe with a cone, or change it",
      `It has been in for ${probe.firings} firings; old ones read too low.`,
    );
  }
  if (relay.firings >= RELAY_FIRINGS) {
    remind(
      "soon",
      "Have the relays looked at",
      `They have switched for ${relay.firings} firings. One that welds shut does not shut the kiln off.`,
    );
  }
  if (shelves.firingsSinceWash >= WASH_FIRINGS) {
    remind("soon", "Look at the wash on the shelves", `${shelves.firingsSinceWash} firings since any was washed.`);
  }
  return found;
}
