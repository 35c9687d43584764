import { Type } from "typebox";
import { PlacementSchema } from "../../loading/load-plan.ts";
import { BadInput } from "../../measures/bad-input.ts";
import { mergeTicks, type TickSaid } from "../loads/merge-ticks.ts";
import { placementAt } from "../loads/places.ts";
import { checkMoment, Id } from "../records/fields.ts";
import { LOADS, type LoadRecord, TickSchema } from "../records/load-record.ts";
import { recordPath } from "../records/refusals.ts";
import { command, input } from "./inputs.ts";
import { changeKept, kept } from "./keeping.ts";

const { level, placement, at } = TickSchema.properties;
const { ware } = PlacementSchema.properties;

const SaidSchema = input({
  level,
  placement,
  at,
  in: Type.Boolean({ description: "True where it was put in, false where the tick was taken back." }),
  ware: Type.Optional(ware),
});

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
    // The plan may have been changed while the phone was away. What it says of places that are still so counts.
    const said = ticks.filter((tick) => isThere(before, tick));
    const [lost] = ticks.filter((tick) => !isThere(before, tick));
    if (lost && said.length === 0) throw noSuchPlace(before, lost);
    const after = { ...before, ...mergeTicks(before, said, now) };
    if (after.state === "planned" && after.ticks.length > before.ticks.length) after.state = "loading";
    await changeKept(records.loads, before, after, now);
    return `${inWords(before, said)}${lost ? `; left out ${ticks.length - said.length} of places that have changed` : ""}`;
  },
});

const isThere = ({ plan }: LoadRecord, tick: TickSaid & { readonly ware?: string }): boolean => {
  const there = placementAt(plan, tick);
  return there !== undefined && (tick.ware === undefined || tick.ware === there.ware);
};

function inWords({ plan, name }: LoadRecord, said: readonly TickSaid[]): string {
  const [first] = said;
  const what = said.length === 1 && first ? (placementAt(plan, first)?.ware ?? "a piece") : `${said.length} pieces`;
  if (said.every((tick) => tick.in)) return `Set ${what} in ${name}`;
  return said.some((tick) => tick.in) ? `Ticked ${what} in or out of ${name}` : `Took ${what} back out of ${name}`;
}

function noSuchPlace(
  load: LoadRecord,
  { level: at, placement: which, ware: wanted }: TickSaid & { ware?: string },
): BadInput {
  const there = placementAt(load.plan, { level: at, placement: which });
  const piece = `piece ${which + 1} of level ${at + 1}`;
  return new BadInput({
    code: "unknown-place",
    path: recordPath(LOADS, load.id),
    found: there
      ? `a tick for ${wanted} as ${piece}, where ${there.ware} stands now`
      : `a tick for ${piece}, which is not there`,
    expected: "a place of the plan as it is now; the plan was changed since, so look at it again",
  });
}
