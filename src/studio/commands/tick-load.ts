import { type Static, Type } from "typebox";
import { LevelSchema, PlacementSchema } from "../../loading/load-plan.ts";
import { BadInput } from "../../measures/bad-input.ts";
import { mergeTicks, type TickSaid } from "../loads/merge-ticks.ts";
import { type Place, placeAtSpot, placementAt } from "../loads/places.ts";
import { checkMoment, Id } from "../records/fields.ts";
import { LOADS, type LoadRecord, TickSchema } from "../records/load-record.ts";
import { recordPath } from "../records/refusals.ts";
import { command, input } from "./inputs.ts";
import { changeKept, kept } from "./keeping.ts";

const { level, placement, at } = TickSchema.properties;
const { ware, xMm, yMm } = PlacementSchema.properties;

const SaidSchema = input({
  level,
  placement,
  at,
  in: Type.Boolean({ description: "True where it was put in, false where the tick was taken back." }),
  ware: Type.Optional(ware),
  spot: Type.Optional(
    Type.Object(
      { topMm: LevelSchema.properties.topMm, xMm, yMm },
      {
        additionalProperties: false,
        description: "Where it was set down: finds the piece in a plan changed meanwhile.",
      },
    ),
  ),
});
type Said = Static<typeof SaidSchema>;

/** Ticks from the kiln. They carry no version: they merge, so that a phone that was away all evening adds what it knows. */
export const tickLoad = command({
  name: "tick-load",
  schema: input({ id: Id("The load."), ticks: Type.Array(SaidSchema, { minItems: 1, maxItems: 2000 }) }),
  scope: ({ id }) => `load:${id}`,
  run: async (records, { id, ticks }, { now }) => {
    const before = await kept(records.loads, LOADS, id);
    ticks.forEach((tick, i) => {
      checkMoment(tick.at, `ticks[${i}].at`);
    });
    // The plan may have been changed while the phone was away. What it says of pieces that still stand so counts.
    const heard = ticks.map((tick) => ({ tick, place: placeOf(before, tick) }));
    const said = heard.flatMap(({ tick, place }): TickSaid[] =>
      place ? [{ ...place, at: tick.at, in: tick.in }] : [],
    );
    const lost = heard.find(({ place }) => place === null);
    if (lost && said.length === 0) throw noSuchPlace(before, lost.tick);
    const after = { ...before, ...mergeTicks(before, said, now) };
    if (after.state === "planned" && after.ticks.length > before.ticks.length) after.state = "loading";
    await changeKept(records.loads, before, after, now);
    return `${inWords(before, said)}${lost ? `; left out ${ticks.length - said.length} of places that have changed` : ""}`;
  },
});

/** Where in the plan as it is now the piece of a tick stands; null where no such piece stands there. */
function placeOf({ plan }: LoadRecord, { level, placement, ware: kind, spot }: Said): Place | null {
  const place = spot === undefined ? { level, placement } : placeAtSpot(plan, kind, spot);
  const there = place && placementAt(plan, place);
  return there && (kind === undefined || kind === there.ware) ? place : null;
}

function inWords({ plan, name }: LoadRecord, said: readonly TickSaid[]): string {
  const [first] = said;
  const what = said.length === 1 && first ? (placementAt(plan, first)?.ware ?? "a piece") : `${said.length} pieces`;
  if (said.every((tick) => tick.in)) return `Set ${what} in ${name}`;
  return said.some((tick) => tick.in) ? `Ticked ${what} in or out of ${name}` : `Took ${what} back out of ${name}`;
}

function noSuchPlace(load: LoadRecord, { level: at, placement: which, ware: wanted }: Said): BadInput {
  const there = placementAt(load.plan, { level: at, placement: which })?.ware;
  const piece = `piece ${which + 1} of level ${at + 1}`;
  const now =
    there === undefined
      ? "which is not there"
      : there === wanted
        ? "which stands elsewhere now"
        : `where ${there} stands now`;
  return new BadInput({
    code: "unknown-place",
    path: recordPath(LOADS, load.id),
    found: `a tick for ${wanted === undefined || there === undefined ? piece : `${wanted} as ${piece}`}, ${now}`,
    expected: "a place of the plan as it is now; the plan was changed since, so look at it again",
  });
}
