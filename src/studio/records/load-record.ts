import { type Static, Type } from "typebox";
import { type LoadPlanFile, LoadPlanSchema } from "../../loading/load-plan.ts";
import { LoadRequestSchema } from "../../loading/load-request.ts";
import { readLoadPlan } from "../../loading/read-load-plan.ts";
import { readLoadRequest } from "../../loading/read-load-request.ts";
import { BadInput } from "../../measures/bad-input.ts";
import { Name, OneOf } from "../../measures/schema.ts";
import { checkId, checkMoment, Id, Moment, orNull, stamps } from "./fields.ts";
import { type RecordKind, within } from "./record-kind.ts";

/** How far a load has come, from the first idea to the unpacked kiln. */
export const LOAD_STATES = ["planned", "loading", "loaded", "fired", "unpacked"] as const;
export type LoadState = (typeof LOAD_STATES)[number];

const place = {
  level: Type.Integer({ minimum: 0, maximum: 49, description: "Which level of the plan, from 0 at the bottom." }),
  placement: Type.Integer({ minimum: 0, maximum: 1999, description: "Which of that level's placements, from 0." }),
};

/** A piece that stays where it stands when the rest is planned again. */
export const PinSchema = Type.Object(place, { additionalProperties: false });
export type Pin = Static<typeof PinSchema>;

/** A piece that stands in the kiln. */
export const TickSchema = Type.Object({ ...place, at: Moment("When it was put in.") }, { additionalProperties: false });
export type Tick = Static<typeof TickSchema>;

/** Which batch a kind of piece in the request came from. */
export const WareSourceSchema = Type.Object(
  { ware: Name("The kind of piece, as in the request."), wareId: Id("The batch; it may be gone since.") },
  { additionalProperties: false },
);

/** One load: what was asked for then, where everything goes, and how far it has been put in. */
export const LoadRecordSchema = Type.Object(
  {
    id: Id("The load."),
    kilnId: Id("The kiln it is for."),
    name: Name("What she calls it."),
    state: OneOf(LOAD_STATES, "How far it has come."),
    request: LoadRequestSchema,
    plan: orNull(LoadPlanSchema),
    pins: Type.Array(PinSchema, { maxItems: 2000 }),
    ticks: Type.Array(TickSchema, { maxItems: 2000 }),
    sources: Type.Array(WareSourceSchema, { maxItems: 2000 }),
    version: Type.Integer({ minimum: 1, maximum: 1e9, description: "Raised by each change." }),
    alternativeOf: Type.Optional(
      Id("The load this is another way of, which may be gone since; left out for the first."),
    ),
    takenBack: Type.Optional(
      Type.Array(TickSchema, {
        maxItems: 2000,
        description: "Places whose tick was taken back, and when: an older tick that comes late counts no more.",
      }),
    ),
    ...stamps,
  },
  { additionalProperties: false },
);
export type LoadRecord = Static<typeof LoadRecordSchema>;

export const LOADS: RecordKind<typeof LoadRecordSchema> = {
  name: "loads",
  one: "load",
  schema: LoadRecordSchema,
  refersTo: { kilnId: "kilns" },
  versioned: true,
  check: ({ request, plan, pins, ticks, sources, takenBack = [] }) => {
    const whole = within("request", () => readLoadRequest(request));
    if (plan !== null) within("plan", () => readLoadPlan(plan, whole));
    pins.forEach((pin, i) => {
      checkPlace(plan, pin, `pins[${i}]`);
    });
    for (const [name, list] of Object.entries({ ticks, takenBack })) {
      list.forEach((tick, i) => {
        checkPlace(plan, tick, `${name}[${i}]`);
        checkMoment(tick.at, `${name}[${i}].at`);
      });
    }
    sources.forEach((source, i) => {
      checkId(source.wareId, `sources[${i}].wareId`);
    });
  },
};

function checkPlace(plan: LoadPlanFile | null, pin: Pin, path: string): void {
  if (plan?.levels[pin.level]?.placements[pin.placement]) return;
  const found = `placement ${pin.placement} of level ${pin.level}`;
  throw new BadInput({ code: "unknown-place", path, found, expected: "a placement of the load's own plan" });
}
