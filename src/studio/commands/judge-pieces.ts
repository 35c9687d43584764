import { type Static, Type } from "typebox";
import { BadInput } from "../../measures/bad-input.ts";
import { OneOf } from "../../measures/schema.ts";
import { type Judged, mergeOutcomes } from "../firings/merge-outcomes.ts";
import { BECAME_WORDS, becameInWords, moveOn } from "../firings/move-on.ts";
import { becomesOf } from "../firings/piece-becomes.ts";
import { type Place, placeKey, placementAt } from "../loads/places.ts";
import { BECOMES } from "../records/becomes.ts";
import { GRADES } from "../records/faults.ts";
import { checkMoment, Id, Moment, orNull } from "../records/fields.ts";
import { type Outcome, OutcomeSchema } from "../records/firing-parts.ts";
import { FIRINGS, type FiringRecord } from "../records/firing-record.ts";
import { LOADS, type LoadRecord } from "../records/load-record.ts";
import { recordPath } from "../records/refusals.ts";
import { endNow, notNow } from "./firing-course-commands.ts";
import { countOf } from "./in-words.ts";
import { command, input } from "./inputs.ts";
import { changeKept, kept } from "./keeping.ts";

const { level, placement, faults, note } = OutcomeSchema.properties;

const JudgedSchema = input({
  level,
  placement,
  grade: orNull(OneOf(GRADES, "How it came out; null takes back what was said of it.")),
  faults: Type.Optional(faults),
  note: Type.Optional(note),
  becomes: Type.Optional(OneOf(BECOMES, "What it becomes, where that is not the usual; it moves on once unpacked.")),
  at: Type.Optional(Moment("When she looked; now where left out.")),
});
type Told = Static<typeof JudgedSchema>;

const BecomesSchema = input({ level, placement, becomes: OneOf(BECOMES, "What it became.") });

/**
 * Says how pieces came out. It carries no version: what is said merges by piece, the later `at` counts, so that a phone
 * that was away adds what it knows. With `becomes` the load is unpacked: every piece moves on, those nobody judged
 * taken as good.
 */
export const judgePieces = command({
  name: "judge-pieces",
  schema: input({
    id: Id("The firing."),
    outcomes: Type.Array(JudgedSchema, { maxItems: 2000 }),
    becomes: Type.Optional(
      Type.Array(BecomesSchema, {
        maxItems: 2000,
        description:
          "Given, the load is unpacked; holds only the pieces that became something else than usual or than their outcomes say.",
      }),
    ),
  }),
  scope: ({ id }) => `firing:${id}`,
  run: async (records, { id, outcomes, becomes }, context) => {
    const before = await kept(records.firings, FIRINGS, id);
    if (before.state === "planned") throw notNow(before, "one that was fired");
    if (before.loadId === null) throw notNow(before, "one with a load: without it there are no places to judge");
    const load = await kept(records.loads, LOADS, before.loadId);
    outcomes.forEach((each, i) => {
      checkPlace(load, each, `outcomes[${i}]`);
    });
    const merged = mergeOutcomes(before, timed(outcomes, context.now), context.now);
    if (becomes === undefined) {
      await changeKept(records.firings, before, { ...before, ...merged }, context.now);
      return judgedInWords(load, outcomes);
    }
    becomes.forEach((each, i) => {
      checkPlace(load, each, `becomes[${i}]`);
    });
    if (load.state === "unpacked") throw unpackedAlready(load);
    if (before.state === "firing") throw notNow(before, "one that has shut off: it is hot");
    const all = withGood(load, merged.outcomes, context.now);
    // Every piece has its judgement now: none is taken back.
    const judged: FiringRecord = {
      ...before,
      ...merged,
      outcomes: all,
      ...(merged.takenBack ? { takenBack: [] } : {}),
    };
    await changeKept(records.firings, before, judged, context.now);
    if (judged.state === "cooling") await endNow(records, judged, context.now, false, context.now);
    const said = new Map(becomes.map((each) => [placeKey(each), each.becomes]));
    const judgedAt = new Map(all.map((each) => [placeKey(each), each]));
    const kind = before.programme?.kind === undefined ? {} : { kind: before.programme.kind };
    const became = await moveOn(
      records,
      load,
      (place, { stage, firingKind }) => {
        const outcome = judgedAt.get(placeKey(place));
        return (
          said.get(placeKey(place)) ??
          becomesOf(outcome?.becomes, { grade: outcome?.grade ?? "good", stage, firingKind, ...kind })
        );
      },
      context,
    );
    const now = await kept(records.loads, LOADS, load.id);
    await changeKept(records.loads, now, { ...now, state: "unpacked" }, context.now);
    return `Unpacked ${load.name}: ${becameInWords(became)}`;
  },
});

/** Judgements with their times; now where she did not say when. */
function timed(said: readonly Told[], now: string): Judged[] {
  return said.map((each, i) => {
    const at = each.at ?? now;
    checkMoment(at, `outcomes[${i}].at`);
    return { ...each, at };
  });
}

/** Every piece of the plan with an outcome: those nobody judged came out good. */
function withGood(load: LoadRecord, outcomes: readonly Outcome[], at: string): Outcome[] {
  const judged = new Map(outcomes.map((each) => [placeKey(each), each]));
  return (load.plan?.levels ?? []).flatMap(({ placements }, on) =>
    placements.map((_, which): Outcome => {
      const place = { level: on, placement: which };
      return judged.get(placeKey(place)) ?? { ...place, grade: "good", faults: [], note: "", at };
    }),
  );
}

function judgedInWords(load: LoadRecord, said: readonly Told[]): string {
  const [first] = said;
  if (said.length !== 1 || first === undefined) return `Judged ${countOf(said.length, "piece")} of ${load.name}`;
  const ware = placementAt(load.plan, first)?.ware ?? "a piece";
  if (first.grade === null) return `Took back what was said of ${ware}`;
  const why = first.faults?.length ? `: ${[...new Set(first.faults)].join(", ")}` : "";
  const then = first.becomes === undefined ? "" : `; ${BECAME_WORDS[first.becomes]}`;
  return `${ware[0]?.toUpperCase()}${ware.slice(1)} came out ${first.grade === "second" ? "a second" : first.grade}${why}${then}`;
}

function checkPlace({ plan, id }: LoadRecord, place: Place, path: string): void {
  if (placementAt(plan, place)) return;
  throw new BadInput({
    code: "unknown-place",
    path,
    found: `piece ${place.placement + 1} of level ${place.level + 1}`,
    expected: `a piece of the plan of ${recordPath(LOADS, id)}`,
  });
}

export const unpackedAlready = (load: LoadRecord): BadInput =>
  new BadInput({
    code: "unpacked-already",
    path: recordPath(LOADS, load.id),
    found: "a load whose pieces have moved on",
    expected: "one that is not unpacked yet; take that back first, or change the ware by hand",
  });
