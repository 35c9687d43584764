import ical, { ICalCalendarMethod, ICalEventTransparency } from "ical-generator";
import { LID_LIFTS_C } from "../../firing/prediction/cool-steps.ts";
import { BadInput } from "../../measures/bad-input.ts";
import { CAUTIONS_FIRST } from "../../sheets/cautions.ts";
import { FIRINGS, type FiringRecord } from "../records/firing-record.ts";
import { recordPath } from "../records/refusals.ts";
import { withoutRandomIds } from "./without-random-ids.ts";

const HOUR_MS = 3_600_000;
/** She looks this long before the expected shut-off, and again at it. Common practice, no source. */
const LOOK_BEFORE_MS = 45 * 60_000;
const LOOK_LASTS_MS = 15 * 60_000;
/** The first look: that it climbs, that the vent draws. Common practice, no source. */
const FIRST_LOOK_MS = HOUR_MS;

/** One entry of the calendar. */
export interface CalendarMoment {
  readonly what: "firing" | "look" | "shut off" | "open";
  readonly startsAt: string;
  readonly endsAt: string;
  readonly title: string;
  readonly words: string;
}

/**
 * A firing's moments: the firing itself, when to look, when it should shut off, when the lid may be lifted at the
 * earliest. By its real start and shut-off where it has them, else as planned and foretold.
 *
 * @throws BadInput where it has no start, or was not foretold
 */
export function calendarMoments(firing: FiringRecord): CalendarMoment[] {
  const { foretold, startedAt, plannedStartAt, shutOffAt } = firing;
  const start = startedAt ?? plannedStartAt;
  if (foretold === undefined) throw missing(firing, "foretold", "one prepared from a load with a plan");
  if (start === undefined) throw missing(firing, "plannedStartAt", "one whose start is chosen");
  const startMs = Date.parse(start);
  const shutOffMs = shutOffAt === undefined ? startMs + foretold.hours * HOUR_MS : Date.parse(shutOffAt);
  const iso = (ms: number): string => new Date(Math.round(ms / 60_000) * 60_000).toISOString();
  const look = (atMs: number, words: string): CalendarMoment => ({
    ...{ what: "look", startsAt: iso(atMs), endsAt: iso(atMs + LOOK_LASTS_MS), words },
    title: `Look at the kiln: ${firing.name}`,
  });
  const moments: CalendarMoment[] = [
    {
      ...{ what: "firing", startsAt: iso(startMs), endsAt: iso(shutOffMs), title: `Firing: ${firing.name}` },
      words: `${foretold.hours.toFixed(1)} hours and ${foretold.kWh.toFixed(0)} kWh foretold, to ${Math.round(foretold.peakC)} °C${foretold.cone === null ? "" : `, cone ${foretold.cone}`}. ${CAUTIONS_FIRST}`,
    },
    look(startMs + FIRST_LOOK_MS, "Feel that it climbs and that the vent draws; no smell where you sit."),
    look(
      shutOffMs - LOOK_BEFORE_MS,
      `The cones should still stand, or just begin to lean${foretold.cone === null ? "" : `; cone ${foretold.cone} is the one to watch`}. Infrared-filtering glasses; stand aside.`,
    ),
    {
      ...{ what: "shut off", startsAt: iso(shutOffMs), endsAt: iso(shutOffMs + LOOK_LASTS_MS) },
      title: `Shut-off: ${firing.name}`,
      words: "See that it has shut off. Stay until it has: Wareboard never switches a kiln.",
    },
  ];
  const cooling = foretold.coolHours[String(LID_LIFTS_C)] ?? null;
  if (cooling !== null) {
    const openMs = shutOffMs + cooling * HOUR_MS;
    moments.push({
      ...{ what: "open", startsAt: iso(openMs), endsAt: iso(openMs + HOUR_MS) },
      title: `May be opened at the earliest: ${firing.name}`,
      words: `Foretold to be under ${LID_LIFTS_C} °C; the probe decides, not the clock. Unload at 50 °C or less.`,
    });
  }
  return moments;
}

/**
 * A firing as an iCalendar file (RFC 5545), times in UTC: any calendar shows them by its own clock. Each moment keeps
 * its identity, so that the file taken in again moves what is there.
 *
 * @param now the moment it is written, ISO 8601 in UTC
 * @throws BadInput as `calendarMoments` does
 */
export const calendarEntry = (firing: FiringRecord, now: string, studioName = ""): string =>
  withoutRandomIds(() => written(firing, now, studioName));

function written(firing: FiringRecord, now: string, studioName: string): string {
  const calendar = ical({
    name: studioName === "" ? "Kiln" : studioName,
    prodId: { company: "Wareboard", product: "firings", language: "EN" },
    method: ICalCalendarMethod.PUBLISH,
  });
  const counted = new Map<string, number>();
  for (const { what, startsAt, endsAt, title, words } of calendarMoments(firing)) {
    const nth = (counted.get(what) ?? 0) + 1;
    counted.set(what, nth);
    calendar.createEvent({
      id: `${firing.id}-${what.replace(" ", "-")}-${nth}@wareboard`,
      stamp: new Date(now),
      start: new Date(startsAt),
      end: new Date(endsAt),
      summary: title,
      description: words,
      // A firing leaves her free to work; a look does not.
      transparency: what === "firing" ? ICalEventTransparency.TRANSPARENT : ICalEventTransparency.OPAQUE,
    });
  }
  return calendar.toString();
}

const missing = (firing: FiringRecord, field: string, expected: string): BadInput =>
  new BadInput({
    code: "missing-field",
    path: `${recordPath(FIRINGS, firing.id)}.${field}`,
    found: "nothing",
    expected,
  });
