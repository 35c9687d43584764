import { Type } from "typebox";
import type { Programme } from "../../firing/programme/programme.ts";
import { BadInput, shown } from "../../measures/bad-input.ts";
import { Name } from "../../measures/schema.ts";
import { CHECKLIST, checklistFor } from "../firings/checklist.ts";
import { foretellLoad } from "../firings/foretold-record.ts";
import { newestCalibration } from "../firings/newest-calibration.ts";
import { checkMoment, Id, Moment, orNull } from "../records/fields.ts";
import { FIRINGS, type FiringRecord, FiringRecordSchema } from "../records/firing-record.ts";
import { KILNS } from "../records/kiln-record.ts";
import { LOADS } from "../records/load-record.ts";
import { recordPath } from "../records/refusals.ts";
import type { StudioRecords } from "../records/store.ts";
import { withFields } from "./firing-fields.ts";
import { command, input, NewId } from "./inputs.ts";
import { begun, changeKept, kept } from "./keeping.ts";

const { name, programme } = FiringRecordSchema.properties;
const plannedStartAt = orNull(Moment("When it is to be switched on; null where that is open."));

/** Prepares the firing of a load: its programme, what is foretold of it, what is to be seen to before the switch. */
const prepareFiring = command({
  name: "prepare-firing",
  schema: input({
    id: NewId,
    loadId: orNull(Id("The load; null for a firing that was not planned here, which then needs a kiln.")),
    kilnId: Type.Optional(Id("The kiln, where there is no load.")),
    name: Type.Optional(name),
    programme,
    plannedStartAt: Type.Optional(plannedStartAt),
  }),
  scope: () => "firings",
  run: async (records, wish, context) => {
    const load = wish.loadId === null ? null : await kept(records.loads, LOADS, wish.loadId);
    const kiln = await kept(records.kilns, KILNS, load?.kilnId ?? wish.kilnId ?? noKiln());
    const firing: FiringRecord = {
      ...begun(wish.id, context),
      ...{ kilnId: kiln.id, loadId: load?.id ?? null, state: "planned", programme: wish.programme },
      name: wish.name ?? load?.name ?? wish.programme?.name ?? `in ${kiln.kiln.name}`,
      ...{ startedAt: null, endedAt: null, meterReadings: [] },
      checklist: checklistFor(wish.programme?.kind).map(({ item }) => ({ item, at: null })),
    };
    const planned = withFields(firing, { plannedStartAt: wish.plannedStartAt });
    await records.firings.add(await foretoldAnew(records, planned));
    return `Prepared the firing ${firing.name}`;
  },
});

function noKiln(): never {
  const expected = "a load, or the kiln that is fired without one";
  throw new BadInput({ code: "missing-field", path: "kilnId", found: "neither load nor kiln", expected });
}

/** The firing with its foretelling made anew: from its load, its programme, and what is known of the kiln now. */
async function foretoldAnew(records: StudioRecords, firing: FiringRecord): Promise<FiringRecord> {
  if (firing.loadId === null || firing.programme === null) return firing;
  const load = await kept(records.loads, LOADS, firing.loadId);
  const { tariff } = await records.settings.get();
  const { foretold } = foretellLoad({
    load,
    programme: firing.programme as Programme,
    calibration: newestCalibration(await records.calibrations.list({ kilnId: firing.kilnId }), firing.kilnId),
    tariff,
    startAt: firing.plannedStartAt,
  });
  return { ...firing, foretold };
}

/** Changes a firing: before it has started what is planned, later what was written down wrongly. */
const changeFiring = command({
  name: "change-firing",
  schema: input({
    id: Id("The firing."),
    name: Type.Optional(name),
    programme: Type.Optional(programme),
    plannedStartAt: Type.Optional(plannedStartAt),
    foretellAgain: Type.Optional(Type.Boolean({ description: "True to foretell it anew as load and kiln are now." })),
    startedAt: Type.Optional(Moment("When it was switched on, put right.")),
    shutOffAt: Type.Optional(orNull(Moment("When the elements went off, put right; null where that is not known."))),
    endedAt: Type.Optional(Moment("When it was over, put right.")),
  }),
  scope: ({ id }) => `firing:${id}`,
  run: async (records, { id, foretellAgain = false, ...change }, { now }) => {
    const before = await kept(records.firings, FIRINGS, id);
    const changed = withFields(before, change);
    const isNew = before.state === "planned" && (change.programme !== undefined || "plannedStartAt" in change);
    const after = isNew || foretellAgain ? await foretoldAnew(records, changed) : changed;
    await changeKept(records.firings, before, after, now);
    if (change.programme !== undefined) return `Chose another programme for ${after.name}`;
    if (change.plannedStartAt !== undefined) return `Chose when ${after.name} is to start`;
    if (foretellAgain) return `Foretold ${after.name} anew`;
    return change.name === undefined ? `Changed ${after.name}` : `Called the firing ${after.name}`;
  },
});

/** Ticks something off that is to be seen to before the switch, or takes the tick back. */
const tickCheck = command({
  name: "tick-check",
  schema: input({ id: Id("The firing."), item: Name("What was seen to."), at: orNull(Moment("When; null: not yet.")) }),
  scope: ({ id }) => `firing:${id}`,
  run: async (records, { id, item, at }, { now }) => {
    const before = await kept(records.firings, FIRINGS, id);
    const known = CHECKLIST.find((each) => each.item === item);
    const there = before.checklist ?? [];
    if (known === undefined && !there.some((each) => each.item === item)) throw noSuchItem(item);
    if (at !== null) checkMoment(at, "at");
    const ticked = { item, at: at !== null && at > now ? now : at };
    const isListed = there.some((each) => each.item === item);
    const checklist = isListed ? there.map((each) => (each.item === item ? ticked : each)) : [...there, ticked];
    await changeKept(records.firings, before, { ...before, checklist }, now);
    const what = known?.text ?? item;
    return at === null ? `Not seen to yet: ${what}` : `Seen to: ${what}`;
  },
});

const noSuchItem = (item: string): BadInput =>
  new BadInput({
    code: "unknown-item",
    path: "item",
    found: shown(item),
    expected: `one of the checklist: ${CHECKLIST.map((each) => each.item).join(", ")}`,
  });

const removeFiring = command({
  name: "remove-firing",
  schema: input({ id: Id("The firing.") }),
  scope: () => "firings",
  run: async (records, { id }) => {
    const firing = await kept(records.firings, FIRINGS, id);
    if (firing.state === "firing") {
      const expected = "one that is not burning now; end it first, at the kiln and here";
      throw new BadInput({
        code: "still-firing",
        path: recordPath(FIRINGS, id),
        found: "a firing that runs",
        expected,
      });
    }
    await records.firings.remove(id);
    return `Took out the firing ${firing.name}`;
  },
});

export const FIRING_COMMANDS = [prepareFiring, changeFiring, tickCheck, removeFiring];
