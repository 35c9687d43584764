import type { FiringKind } from "../../../firing/cones/firing-kind.ts";
import type { LengthUnits } from "../../../measures/length.ts";
import type { WareRecord, WareStage } from "../../../studio/records/ware-record.ts";
import { type FormName, type FormOutline, formOutline } from "../../../ware/forms.ts";
import type { Cookie, Protrusion, WareFile } from "../../../ware/ware.ts";
import { isCornered, suggestName, type TypedSize } from "./name-suggestion.ts";

/** A part as the form draws it at this size, her own measures, or none. */
export type PartChoice = "by-form" | Protrusion | null;
/** A profile as the form draws it, her own measures, or a plain cylinder as wide as the widest place. */
export type ProfileChoice = "by-form" | readonly (readonly [heightMm: number, radiusMm: number])[] | null;

/** A batch while it is being written down. What is not typed yet is null. */
export interface BatchDraft extends TypedSize {
  readonly form: FormName | null;
  /** True of a box or tile whose sides are not known any more: `acrossMm` is the circle about its corners. */
  readonly isAcrossCorners: boolean;
  /** Null: the name suggested. */
  readonly name: string | null;
  readonly count: number | null;
  readonly handle: PartChoice;
  readonly spout: PartChoice;
  readonly profile: ProfileChoice;
  readonly cookie: Cookie | null;
  readonly stage: WareStage;
  readonly firingKind: FiringKind | null;
  /** "" where none is said. */
  readonly cone: string;
  readonly clayBodyId: string | null;
  readonly glazeId: string | null;
  /** A glaze in her own words; "" where none, or where a recorded one is chosen. */
  readonly glazeWords: string;
  readonly dueOn: string | null;
  readonly value: number;
  readonly mustFire: boolean;
  readonly massKg: number | null;
  readonly ownerNote: string;
}

/** A batch of which nothing is typed. */
export const EMPTY_DRAFT: BatchDraft = {
  form: null,
  isAcrossCorners: false,
  name: null,
  acrossMm: null,
  shorterMm: null,
  heightMm: null,
  count: null,
  handle: "by-form",
  spout: "by-form",
  profile: null,
  cookie: null,
  stage: "greenware",
  firingKind: "bisque",
  cone: "",
  clayBodyId: null,
  glazeId: null,
  glazeWords: "",
  dueOn: null,
  value: 1,
  mustFire: false,
  massKg: null,
  ownerNote: "",
};

/** A batch as it is sent to be kept. */
export type NewBatch = Omit<WareRecord, "id" | "createdAt" | "changedAt">;

/** What is still to be said, by field, in a few words. */
export type Missing = Partial<Record<"form" | "acrossMm" | "heightMm" | "count" | "name", string>>;

/** What the draft leaves open. Nothing: it can be kept. */
export function missingOf(draft: BatchDraft): Missing {
  const across = hasSides(draft) ? "How long is it?" : "How wide is it?";
  return {
    ...(isLength(draft.acrossMm) ? {} : { acrossMm: across }),
    ...(isLength(draft.heightMm) ? {} : { heightMm: "How tall is it?" }),
    ...(isCount(draft.count) ? {} : { count: "How many are there?" }),
    ...(draft.name?.trim() === "" ? { name: "What is it called?" } : {}),
  };
}

/** True where its two sides are typed rather than what it measures across. */
export const hasSides = ({ form, isAcrossCorners }: BatchDraft): boolean => isCornered(form) && !isAcrossCorners;

/** The name it will have. */
export const nameOf = (draft: BatchDraft, units: LengthUnits, taken: ReadonlySet<string>): string =>
  draft.name?.trim() ?? suggestName(draft.form, draft, units, taken);

/** The outline its form gives it, or null while no size is typed. */
export function outlineOf(draft: BatchDraft): FormOutline | null {
  if (!isLength(draft.acrossMm) || !isLength(draft.heightMm)) return null;
  const size = { diameterMm: draft.acrossMm, heightMm: draft.heightMm };
  if (!hasSides(draft)) return formOutline(isCornered(draft.form) ? "other" : (draft.form ?? "other"), size);
  return formOutline(draft.form ?? "box", {
    ...size,
    widthMm: isLength(draft.shorterMm) ? draft.shorterMm : draft.acrossMm,
  });
}

/** The batch a draft stands for, or null while something is missing. */
export function batchOf(draft: BatchDraft, units: LengthUnits, taken: ReadonlySet<string>): NewBatch | null {
  const outline = outlineOf(draft);
  if (!outline || Object.keys(missingOf(draft)).length > 0) return null;
  const { stage, firingKind, dueOn, ownerNote, clayBodyId, glazeId } = draft;
  const ware: WareFile = {
    name: nameOf(draft, units, taken),
    count: draft.count as number,
    diameterMm: outline.diameterMm,
    heightMm: outline.heightMm,
    ...(draft.form ? { form: draft.form } : {}),
    ...given("handle", draft.handle === "by-form" ? outline.handle : draft.handle),
    ...given("spout", draft.spout === "by-form" ? outline.spout : draft.spout),
    ...given("profile", profileOf(draft, outline)),
    ...given("cookie", draft.cookie),
    ...(draft.value === 1 ? {} : { value: draft.value }),
    ...(draft.mustFire ? { mustFire: true } : {}),
    ...(glazeId === null && draft.glazeWords.trim() !== "" ? { glaze: draft.glazeWords.trim() } : {}),
    ...(draft.cone === "" ? {} : { cone: draft.cone }),
    ...given("massKg", draft.massKg),
  };
  return { ware, stage, firingKind, dueOn, ownerNote: ownerNote.trim(), clayBodyId, glazeId };
}

/** The draft of a batch that is kept, to change it. A box or tile is known by the circle about its corners alone. */
export function draftOf({ ware, ...record }: WareRecord): BatchDraft {
  return {
    form: ware.form ?? null,
    isAcrossCorners: isCornered(ware.form ?? null),
    name: ware.name,
    acrossMm: ware.diameterMm,
    shorterMm: null,
    heightMm: ware.heightMm,
    count: ware.count,
    handle: ware.handle ?? null,
    spout: ware.spout ?? null,
    profile: ware.profile ?? null,
    cookie: ware.cookie ?? null,
    stage: record.stage,
    firingKind: record.firingKind,
    cone: ware.cone ?? "",
    clayBodyId: record.clayBodyId,
    glazeId: record.glazeId,
    glazeWords: record.glazeId === null ? (ware.glaze ?? "") : "",
    dueOn: record.dueOn,
    value: ware.value ?? 1,
    mustFire: ware.mustFire ?? false,
    massKg: ware.massKg ?? null,
    ownerNote: record.ownerNote,
  };
}

/** A draft whose name, where it is the one its form and size suggest, goes on following them. */
export function followingName(draft: BatchDraft, units: LengthUnits, taken: ReadonlySet<string>): BatchDraft {
  const isSuggested = draft.name === suggestName(draft.form, draft, units, taken);
  return isSuggested ? { ...draft, name: null } : draft;
}

function profileOf({ profile }: BatchDraft, outline: FormOutline): [number, number][] | null {
  if (profile === "by-form") return outline.profile;
  return profile === null ? null : profile.map(([up, out]) => [up, out]);
}

const isLength = (mm: number | null): mm is number => mm !== null && mm > 0;
const isCount = (count: number | null): boolean => count !== null && Number.isInteger(count) && count >= 1;

/** A field of its own, or no field: the file leaves out what is not there. */
const given = <Field extends string, Value>(field: Field, value: Value | null): Partial<Record<Field, Value>> =>
  value === null ? {} : ({ [field]: value } as Record<Field, Value>);
