import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { StudioNotice } from "../../studio/api/notices-contract.ts";
import { isDanger, isSame, QuietRules, withoutFlicker } from "./quiet-rules.ts";

const at = (clock: string): number => Date.parse(`2026-11-25T${clock}:00.000Z`);
const moment = (clock: string): string => new Date(at(clock)).toISOString();
const rules = () => new QuietRules((ms) => new Date(ms).getUTCHours());
let ids = 0;
const notice = (kind: string): StudioNotice => ({
  ...{ id: `n${++ids}`, firingId: "f", firingName: "glaze", kind, since: moment("09:00"), until: null, message: kind },
  isDanger: isDanger(kind),
});
const kinds = (notices: readonly StudioNotice[]) => notices.map(({ kind }) => kind);

describe("quiet rules", () => {
  test("one fault is told once", () => {
    const quiet = rules();
    const one = notice("stalling");
    expect(quiet.begun(one, at("10:00"))).toEqual([one]);
    expect(quiet.due(at("10:01"))).toEqual([]);
    expect(quiet.due(at("20:00"))).toEqual([]);
  });

  test("at night only danger, and a cone that is due; the rest waits for the morning if it still lasts", () => {
    const quiet = rules();
    const [silence, open] = [notice("silence"), notice("may be opened")];
    expect(quiet.begun(silence, at("23:00"))).toEqual([]);
    expect(quiet.begun(open, at("23:10"))).toEqual([]);
    expect(kinds(quiet.begun(notice("overshoot"), at("23:20")))).toEqual(["overshoot"]);
    expect(kinds(quiet.begun(notice("cone due"), at("23:30")))).toEqual(["cone due"]);
    quiet.ended(silence.id);
    expect(quiet.due(at("06:59") + 86_400_000)).toEqual([]);
    expect(kinds(quiet.due(at("07:00") + 86_400_000))).toEqual(["may be opened"]);
  });

  test("never more than eight an hour, four of them no danger; what waited comes when there is room", () => {
    const quiet = rules();
    const sent = (kind: string, clock: string) => quiet.begun(notice(kind), at(clock)).length;
    expect(Array.from({ length: 6 }, () => sent("jump", "12:00"))).toEqual([1, 1, 1, 1, 0, 0]);
    expect(Array.from({ length: 6 }, () => sent("overshoot", "12:01"))).toEqual([1, 1, 1, 1, 0, 0]);
    expect(kinds(quiet.due(at("13:00")))).toEqual(["overshoot", "overshoot", "jump", "jump"]);
  });

  test("whatever comes whenever, no hour has more than eight and none is told twice", () => {
    const one = fc.record({
      minute: fc.integer({ min: 0, max: 3000 }),
      kind: fc.constantFrom("jump", "overshoot", "silence"),
    });
    fc.assert(
      fc.property(fc.array(one, { maxLength: 60 }), (faults) => {
        const quiet = rules();
        const sent: { ms: number; id: string }[] = [];
        for (const { minute, kind } of faults.toSorted((a, b) => a.minute - b.minute)) {
          const ms = at("00:00") + minute * 60_000;
          sent.push(...quiet.begun(notice(kind), ms).map(({ id }) => ({ ms, id })));
        }
        expect(new Set(sent.map(({ id }) => id)).size).toBe(sent.length);
        for (const { ms } of sent) {
          expect(sent.filter((each) => each.ms > ms - 3_600_000 && each.ms <= ms).length).toBeLessThanOrEqual(8);
        }
      }),
    );
  });
});

describe("one fault", () => {
  const fault = (kind: string, since: string, until: string | null) => ({
    ...{ kind, since: moment(since) },
    until: until === null ? null : moment(until),
  });

  test("that flickers within ten minutes stays one; after that it is another", () => {
    expect(
      withoutFlicker([
        fault("stalling", "10:00", "10:05"),
        fault("jump", "10:06", "10:07"),
        fault("stalling", "10:15", "10:16"),
        fault("stalling", "10:27", null),
      ]),
    ).toEqual([fault("stalling", "10:00", "10:16"), fault("jump", "10:06", "10:07"), fault("stalling", "10:27", null)]);
  });

  test("found again after a restart, a little earlier or later, is the one that is known", () => {
    const known = fault("silence", "10:00", null);
    expect(isSame(known, fault("silence", "09:55", "12:00"))).toBe(true);
    expect(isSame(known, fault("silence", "14:00", null))).toBe(true);
    expect(isSame(known, fault("jump", "10:00", null))).toBe(false);
    expect(isSame(fault("silence", "10:00", "10:30"), fault("silence", "10:41", null))).toBe(false);
  });
});
