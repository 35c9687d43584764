import { CONES } from "../../../firing/cones/cone.ts";
import { FIRING_KINDS } from "../../../firing/cones/firing-kind.ts";
import { FORMS, STAGES } from "../words/ware-words.ts";
import { type BatchDraft, EMPTY_DRAFT } from "./batch-draft.ts";

/** What the next batch has in common with the last: all that is not its size, its count or its own story. */
const REMEMBERED = [
  "form",
  "stage",
  "firingKind",
  "cone",
  "clayBodyId",
  "glazeId",
  "glazeWords",
  "dueOn",
  "value",
  "mustFire",
  "cookie",
] as const satisfies readonly (keyof BatchDraft)[];
export type Remembered = Pick<BatchDraft, (typeof REMEMBERED)[number]>;

/** What to remember of a batch. */
export const rememberedOf = (draft: BatchDraft): Remembered =>
  Object.fromEntries(REMEMBERED.map((field) => [field, draft[field]])) as unknown as Remembered;

/** What is still there to be referred to. */
export interface Known {
  readonly clayBodyIds: ReadonlySet<string>;
  readonly glazeIds: ReadonlySet<string>;
  /** Today on her calendar. */
  readonly today: string;
}

/**
 * The draft a new batch begins with, from what was remembered of the last. What makes no sense any more is dropped: a day
 * that has passed, a glaze that is gone, anything that is not what it should be.
 *
 * @param text as it was kept on this device, or null where nothing was
 */
export function nextDraft(text: string | null, known: Known): BatchDraft {
  const last = parsed(text);
  const one = <Value>(values: readonly Value[], value: unknown, otherwise: Value): Value =>
    values.includes(value as Value) ? (value as Value) : otherwise;
  const idIn = (ids: ReadonlySet<string>, id: unknown): string | null =>
    typeof id === "string" && ids.has(id) ? id : null;
  const glazeId = idIn(known.glazeIds, last.glazeId);
  return {
    ...EMPTY_DRAFT,
    form: one([...FORMS, null], last.form, null),
    stage: one(STAGES, last.stage, EMPTY_DRAFT.stage),
    firingKind: one([...FIRING_KINDS, null], last.firingKind, EMPTY_DRAFT.firingKind),
    cone: one([...CONES, ""], last.cone, ""),
    clayBodyId: idIn(known.clayBodyIds, last.clayBodyId),
    glazeId,
    glazeWords: glazeId === null && typeof last.glazeWords === "string" ? last.glazeWords.slice(0, 120) : "",
    dueOn: isDay(last.dueOn) && last.dueOn >= known.today ? last.dueOn : null,
    value: typeof last.value === "number" && last.value >= 0 && last.value <= 1e6 ? last.value : 1,
    mustFire: last.mustFire === true,
    cookie: cookieIn(last.cookie),
  };
}

const isDay = (day: unknown): day is string => typeof day === "string" && /^\d{4}-\d\d-\d\d$/.test(day);

function cookieIn(cookie: unknown): BatchDraft["cookie"] {
  if (typeof cookie !== "object" || cookie === null) return null;
  const { diameterMm, thicknessMm } = cookie as Record<string, unknown>;
  const isSize = (mm: unknown): mm is number => typeof mm === "number" && mm > 0 && mm <= 5000;
  return isSize(diameterMm) && isSize(thicknessMm) ? { diameterMm, thicknessMm } : null;
}

function parsed(text: string | null): Partial<Record<keyof Remembered, unknown>> {
  try {
    const value: unknown = text === null ? null : JSON.parse(text);
    return typeof value === "object" && value !== null ? value : {};
  } catch {
    return {};
  }
}
