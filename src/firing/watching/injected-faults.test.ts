import { expect, test } from "vitest";
import { seededChance } from "../../measures/seeded-chance.ts";
import type { Fault, FaultKind } from "./fault.ts";
import { type QuietFiring, quietFiring } from "./testing/quiet-kilns.ts";
import { type Reading, readingsOf, staged } from "./testing/staged-firing.ts";
import { minuteInClimb, watchReadings } from "./testing/watched-readings.ts";

interface Climb {
  readonly quiet: QuietFiring;
  readonly readings: readonly Reading[];
  /** A minute on a climb above red heat. */
  readonly at: number;
  readonly read: (firing: Parameters<typeof readingsOf>[0]) => Reading[];
}

/** Firings with a climb in which something can go wrong, a reading a minute. */
const CLIMBS: readonly Climb[] = [...Array(40).keys()]
  .flatMap((i): Climb[] => {
    const chance = seededChance(500 + i);
    const quiet = quietFiring(chance);
    const read = (firing: Parameters<typeof readingsOf>[0]): Reading[] =>
      readingsOf(firing, chance, { everyMin: 1, noiseC: i % 2 === 0 ? 1 : 3, stepC: i % 3 === 0 ? 0.1 : 1 });
    const readings = read(quiet.firing);
    const at = minuteInClimb(quiet.staging.programme.segments, readings);
    return at === null ? [] : [{ quiet, readings, at, read }];
  })
  .slice(0, 24);

/** What is found of a fault put in, and when it was noticed after it began. */
function noticed(
  kind: FaultKind,
  put: (climb: Climb) => readonly Reading[],
): { worst: number; all: readonly Fault[][] } {
  expect(CLIMBS.length).toBe(24);
  const all: Fault[][] = [];
  let worst = 0;
  for (const climb of CLIMBS) {
    const { faults } = watchReadings(climb.quiet.staging.programme.segments, put(climb));
    all.push(faults);
    const first = faults.find((each) => each.kind === kind);
    const late = first === undefined ? Number.POSITIVE_INFINITY : first.noticedMin - climb.at;
    worst = Math.max(worst, late);
  }
  console.log(`${kind}: noticed at the latest after ${worst.toFixed(0)} min in ${all.length} firings`);
  return { worst, all };
}

const after = ({ readings, at }: Climb, change: (reading: Reading, frozenC: number) => Reading | null): Reading[] => {
  const frozenC = readings.findLast((each) => each.minute <= at)?.tempC as number;
  return readings.flatMap((each) => {
    const changed = each.minute > at ? change(each, frozenC) : each;
    return changed === null ? [] : [changed];
  });
};
const onlyOne = (all: readonly Fault[][], kind: FaultKind): void => {
  for (const faults of all) expect(faults.map((each) => each.kind)).toEqual([kind]);
};

test("silence: ten minutes, and it ends with the next reading", () => {
  const { worst, all } = noticed("silence", (climb) =>
    after(climb, (each) => (each.minute < climb.at + 25 ? null : each)),
  );
  expect(worst).toBeLessThanOrEqual(10);
  onlyOne(all, "silence");
  for (const [i, [fault]] of all.entries()) {
    expect(fault?.untilMin).toBeCloseTo((CLIMBS[i] as Climb).at + 25, 6);
  }
});

test("silence is noticed while it lasts when asked, and is the same fault after", () => {
  const climb = CLIMBS[0] as Climb;
  const before = climb.readings.filter((each) => each.minute <= climb.at);
  const { watch } = watchReadings(climb.quiet.staging.programme.segments, before);
  watch.silence(climb.at + 9.5);
  expect(watch.faults).toEqual([]);
  watch.silence(climb.at + 10);
  watch.silence(climb.at + 30);
  expect(watch.faults.map(({ kind, noticedMin, untilMin }) => ({ kind, noticedMin, untilMin }))).toEqual([
    { kind: "silence", noticedMin: climb.at + 10, untilMin: null },
  ]);
});

test("a jump: with the reading that jumped, once, whether it comes back or stays", () => {
  const back = noticed("jump", (climb) =>
    after(climb, (each) => (each.minute <= climb.at + 2 ? { ...each, tempC: each.tempC + 90 } : each)),
  );
  expect(back.worst).toBeLessThanOrEqual(1);
  onlyOne(back.all, "jump");
  const down = noticed("jump", (climb) =>
    after(climb, (each) => (each.minute <= climb.at + 2 ? { ...each, tempC: each.tempC - 90 } : each)),
  );
  expect(down.worst).toBeLessThanOrEqual(3);
  onlyOne(down.all, "jump");
});

test("a slipped probe: six minutes, and not a jump nor a stalling kiln besides", () => {
  const { worst, all } = noticed("slipped probe", (climb) =>
    after(climb, (each) => ({ ...each, tempC: Math.round(20 + 0.88 * (each.tempC - 20)) })),
  );
  expect(worst).toBeLessThanOrEqual(6);
  onlyOne(all, "slipped probe");
  for (const [fault] of all) expect(fault?.untilMin).toBeNull();
});

test("a slipped probe put back is over", () => {
  const { all } = noticed("slipped probe", (climb) =>
    after(climb, (each) => (each.minute > climb.at + 12 ? each : { ...each, tempC: 20 + 0.88 * (each.tempC - 20) })),
  );
  onlyOne(all, "slipped probe");
  for (const [i, [fault]] of all.entries()) {
    expect((fault?.untilMin as number) - (CLIMBS[i] as Climb).at).toBeLessThanOrEqual(13);
  }
});

test("a dead probe that keeps its last value: fifteen minutes; one that reads full scale or nothing: two readings", () => {
  const stuck = noticed("dead probe", (climb) =>
    after(climb, (each, frozenC) => (each.minute > climb.at + 40 ? null : { ...each, tempC: frozenC })),
  );
  expect(stuck.worst).toBeLessThanOrEqual(15);
  onlyOne(stuck.all, "dead probe");
  for (const tempC of [Number.NaN, 1800, -200]) {
    const open = noticed("dead probe", (climb) => after(climb, (each) => ({ ...each, tempC })));
    expect(open.worst).toBeLessThanOrEqual(2);
    onlyOne(open.all, "dead probe");
  }
});

test("stalling: a kiln whose climb ends is noticed within 20 minutes", () => {
  const { worst, all } = noticed("stalling", (climb) =>
    after(climb, (each, frozenC) => {
      if (each.minute > climb.at + 60) return null;
      const noiseC = (each.minute * 7.3) % 5;
      return { ...each, tempC: Math.round(frozenC + (5 * (each.minute - climb.at)) / 60 + noiseC - 2) };
    }),
  );
  expect(worst).toBeLessThanOrEqual(20);
  onlyOne(all, "stalling");
});

test("stalling: a kiln that loses its power while it climbs is noticed within 12 minutes, once, and it ends with the power back", () => {
  const { worst, all } = noticed("stalling", ({ quiet, at, read }) =>
    read(
      staged({
        ...quiet.staging,
        share: (minute) => (minute >= at && minute < at + 25 ? 0 : 1),
        untilMin: at + 150,
      }),
    ),
  );
  expect(worst).toBeLessThanOrEqual(12);
  onlyOne(all, "stalling");
  for (const [fault] of all) expect(fault?.untilMin).not.toBeNull();
});

test("overshoot: a welded relay is noticed three minutes after the kiln lies past its programme", () => {
  let worst = 0;
  let sinceWelding = 0;
  for (const { quiet, at, read } of CLIMBS) {
    const { segments } = quiet.staging.programme;
    const readings = read(staged({ ...quiet.staging, weldedFromMin: at, untilMin: at + 90 }));
    const { faults, places } = watchReadings(segments, readings);
    const past = readings.findIndex((each, i) => each.minute > at && (places[i]?.behindC ?? 0) < -31);
    const found = faults.find((each) => each.kind === "overshoot");
    // A kiln just strong enough for its climb does not run away from it.
    if (past < 0) continue;
    worst = Math.max(worst, (found?.noticedMin ?? Number.POSITIVE_INFINITY) - (readings[past] as Reading).minute);
    sinceWelding = Math.max(sinceWelding, (found?.noticedMin ?? 0) - at);
    expect(found?.message).toContain("isolator");
  }
  console.log(
    `overshoot: noticed ${worst.toFixed(0)} min after it is past, ${sinceWelding.toFixed(0)} min after welding at the latest`,
  );
  expect(worst).toBeLessThanOrEqual(3);
});

test("overshoot: a kiln that goes on heating once its programme is over", () => {
  for (const { quiet, read } of CLIMBS.slice(0, 8)) {
    const { staging, firing } = quiet;
    const lastRises =
      (staging.programme.segments.at(-1)?.targetC ?? 0) > (staging.programme.segments.at(-2)?.targetC ?? 0);
    if (!lastRises) continue;
    const readings = read(
      staged({ ...staging, weldedFromMin: firing.shutOffMin - 1, untilMin: firing.shutOffMin + 60 }),
    ).filter((each) => each.tempC < 1390);
    const found = watchReadings(staging.programme.segments, readings).faults.filter(
      (each) => each.kind === "overshoot",
    );
    expect(found.length, staging.programme.name).toBe(1);
  }
});

test("no sentence tells Wareboard or anybody at a distance to switch: by hand, at the kiln, its manual first", () => {
  const { all } = noticed("slipped probe", (climb) => after(climb, (each) => ({ ...each, tempC: each.tempC - 130 })));
  for (const fault of all.flat()) {
    expect(fault.message).toContain("manual");
    expect(fault.message).not.toMatch(/Wareboard (will|can|has) switch/);
  }
});
