import type { FiringKind } from "../../firing/cones/firing-kind.ts";
import { type FormName, formOutline } from "../../ware/forms.ts";
import type { WareFile } from "../../ware/ware.ts";
import type { WareStage } from "../records/ware-record.ts";
import type { DemoClay, DemoGlaze } from "./demo-materials.ts";

/** A batch of the demo: what it is, and where it is in its way through the studio. */
export interface DemoBatch {
  readonly ware: WareFile;
  readonly clay: DemoClay;
  readonly glaze: DemoGlaze | null;
  readonly stage: WareStage;
  readonly kind: FiringKind | null;
  /** Days from now until it is wanted. */
  readonly dueInDays: number | null;
  readonly ownerNote: string;
  /** Days since it was written down. */
  readonly daysOld: number;
}

type Size = readonly [diameterMm: number, heightMm: number, widthMm?: number];
type More = Partial<Pick<WareFile, "value" | "mustFire" | "cookie">> & {
  readonly due?: number;
  readonly note?: string;
  readonly old?: number;
};

const piece = (name: string, form: FormName, count: number, size: Size, cone: string, more: More): WareFile => {
  const [diameterMm, heightMm, widthMm] = size;
  const { profile, handle, spout, ...outline } = formOutline(form, {
    ...{ diameterMm, heightMm },
    ...(widthMm === undefined ? {} : { widthMm }),
  });
  return {
    ...{ name, count, form, cone, ...outline, value: more.value ?? 10 },
    ...(profile ? { profile } : {}),
    ...(handle ? { handle } : {}),
    ...(spout ? { spout } : {}),
    ...(more.cookie ? { cookie: more.cookie } : {}),
    ...(more.mustFire ? { mustFire: true } : {}),
  };
};
const batch = (
  ware: WareFile,
  clay: DemoClay,
  glaze: DemoGlaze | null,
  stage: WareStage,
  kind: FiringKind | null,
  { due, note = "", old = 9 }: More,
): DemoBatch => ({ ware, clay, glaze, stage, kind, dueInDays: due ?? null, ownerNote: note, daysOld: old });

/** Glazed and waiting for a glaze firing. */
const glazed = (
  name: string,
  form: FormName,
  count: number,
  size: Size,
  clay: DemoClay,
  glaze: DemoGlaze,
  more: More = {},
) => batch(piece(name, form, count, size, clay === "red" ? "03" : "6", more), clay, glaze, "glazed", "glaze", more);
/** Raw and dry, waiting for a bisque firing. */
const raw = (name: string, form: FormName, count: number, size: Size, clay: DemoClay, more: More = {}) =>
  batch(piece(name, form, count, size, "05", more), clay, null, "greenware", "bisque", { old: 4, ...more });
/** Back from the bisque, waiting for its glaze. */
const bisque = (name: string, form: FormName, count: number, size: Size, clay: DemoClay, more: More = {}) =>
  batch(piece(name, form, count, size, clay === "red" ? "03" : "6", more), clay, null, "bisque", "glaze", {
    old: 16,
    ...more,
  });
/** Raw with its glaze on: fired once. */
const once = (
  name: string,
  form: FormName,
  count: number,
  size: Size,
  clay: DemoClay,
  glaze: DemoGlaze,
  more: More = {},
) => batch(piece(name, form, count, size, "6", more), clay, glaze, "greenware", "once-fired", { old: 5, ...more });
/** Done. */
const finished = (
  name: string,
  form: FormName,
  count: number,
  size: Size,
  clay: DemoClay,
  glaze: DemoGlaze,
  more: More = {},
) => batch(piece(name, form, count, size, "6", more), clay, glaze, "finished", null, { old: 30, ...more });

const cookie = (diameterMm: number) => ({ diameterMm, thicknessMm: 7 });

/** What stands on the shelves of an invented studio. Sizes in millimetres as they are now, forms as they start out. */
export const DEMO_WARE: readonly DemoBatch[] = [
  glazed("espresso cup", "mug", 8, [68, 62], "buff", "oat", { due: 12, note: "winter market", value: 14 }),
  glazed("breakfast mug", "mug", 6, [88, 98], "buff", "moss", { due: 12, note: "winter market", value: 34 }),
  glazed("breakfast mug, blue", "mug", 4, [88, 98], "buff", "tide", { value: 34, cookie: cookie(80), due: 12 }),
  glazed("straight beaker", "beaker", 6, [76, 105], "white", "clear", { value: 20 }),
  glazed("little beaker", "beaker", 5, [62, 74], "white", "oat", { value: 15 }),
  glazed("tea bowl", "bowl", 5, [112, 76], "buff", "ash", { value: 32, cookie: cookie(70), due: 20 }),
  glazed("soup bowl", "bowl", 4, [136, 60], "buff", "oat", { due: 6, note: "Maren's four", value: 48, mustFire: true }),
  glazed("noodle bowl", "bowl", 3, [178, 82], "buff", "moss", { value: 36 }),
  glazed("dipping dish", "bowl", 9, [82, 30], "white", "tide", { value: 9, cookie: cookie(60) }),
  glazed("side plate", "plate", 4, [152, 22], "buff", "oat", {
    due: 6,
    note: "Maren's four",
    value: 52,
    mustFire: true,
  }),
  glazed("dinner plate", "plate", 4, [255, 28], "buff", "oat", { due: 6, note: "Maren's four", value: 38 }),
  glazed("bud vase", "vase", 5, [72, 122], "white", "slate", { value: 24, cookie: cookie(58) }),
  glazed("shoulder vase", "vase", 2, [132, 205], "buff", "slate", { value: 70, cookie: cookie(95), due: 12 }),
  glazed("tall vase", "vase", 1, [140, 292], "buff", "ash", {
    due: 3,
    note: "for the window at the library",
    value: 120,
    mustFire: true,
  }),
  glazed("oil bottle", "bottle", 3, [84, 172], "buff", "rust", { value: 40 }),
  glazed("round teapot", "teapot", 1, [152, 138], "buff", "moss", {
    due: 9,
    note: "Jorun, with its four cups",
    value: 95,
    mustFire: true,
  }),
  glazed("small teapot", "teapot", 2, [118, 112], "white", "clear", { value: 80 }),
  glazed("milk jug", "jug", 3, [86, 102], "buff", "oat", { value: 28 }),
  glazed("water jug", "jug", 1, [128, 205], "buff", "tide", { value: 62, cookie: cookie(100) }),
  glazed("honey jar", "jar", 4, [92, 96], "buff", "oat", { value: 34, due: 12 }),
  glazed("honey jar lid", "lid", 4, [88, 42], "buff", "oat", { value: 2, due: 12, note: "each with its jar" }),
  glazed("bread crock", "jar", 1, [236, 218], "buff", "rust", { value: 110, note: "waits for a load with room" }),
  glazed("bread crock lid", "lid", 1, [228, 66], "buff", "rust", { value: 5 }),
  glazed("butter box", "box", 2, [145, 74, 92], "white", "clear", { value: 45 }),
  glazed("butter box lid", "box", 2, [150, 28, 98], "white", "clear", { value: 3 }),
  glazed("house tile", "tile", 6, [102, 9, 102], "buff", "slate", { value: 8 }),
  glazed("salt pig", "jar", 2, [108, 118], "buff", "rust", { value: 38 }),
  glazed("great platter", "plate", 1, [368, 42], "buff", "moss", {
    value: 90,
    note: "too wide for the eight-sided one; ask about a bigger kiln",
  }),
  glazed("ring bowl", "bowl", 6, [64, 34], "white", "slate", { value: 12, cookie: cookie(48) }),
  glazed("incense stand", "other", 4, [54, 26], "buff", "rust", { value: 8 }),
  glazed("olive dish", "plate", 4, [128, 26], "red", "honey", { value: 18 }),
  glazed("flower pot", "beaker", 3, [142, 130], "red", "honey", { value: 26, due: 40 }),
  raw("espresso cup, second batch", "mug", 10, [74, 68], "buff", { due: 33, value: 14 }),
  raw("wide mug", "mug", 6, [104, 88], "buff", { value: 26 }),
  raw("porridge bowl", "bowl", 8, [158, 74], "buff", { due: 33, value: 26 }),
  raw("mixing bowl", "bowl", 2, [242, 124], "buff", { value: 60 }),
  raw("dessert plate", "plate", 6, [202, 26], "white", { value: 26 }),
  raw("serving plate", "plate", 1, [298, 34], "buff", { value: 55 }),
  raw("onion vase", "vase", 3, [126, 168], "white", { value: 52 }),
  raw("slim bottle", "bottle", 4, [72, 196], "white", { value: 38 }),
  raw("tea caddy", "jar", 4, [96, 112], "white", { value: 44 }),
  raw("tea caddy lid", "lid", 4, [74, 34], "white", { value: 2 }),
  raw("cream jug", "jug", 4, [78, 88], "buff", { value: 22 }),
  raw("garden teapot", "teapot", 1, [168, 150], "buff", { value: 95, note: "handle thick: dry slowly" }),
  raw("spice box", "box", 3, [118, 64, 82], "buff", { value: 36 }),
  raw("number tile", "tile", 12, [96, 9, 96], "buff", { value: 8, note: "for the new houses by the mill" }),
  raw("candle cup", "beaker", 8, [74, 72], "red", { value: 14 }),
  raw("herb pot", "beaker", 4, [134, 122], "red", { value: 22, due: 60 }),
  raw("glaze test tile", "tile", 10, [58, 7, 44], "buff", { value: 0.5 }),
  bisque("ramen bowl", "bowl", 4, [186, 84], "buff", { value: 38 }),
  bisque("lunch plate", "plate", 5, [222, 26], "buff", { value: 30, due: 26 }),
  bisque("pouring bowl", "jug", 3, [136, 92], "white", { value: 42 }),
  bisque("moon jar", "vase", 1, [212, 224], "white", { value: 160, note: "decide on the glaze" }),
  bisque("egg cup", "beaker", 8, [52, 58], "white", { value: 10 }),
  bisque("garlic jar", "jar", 2, [116, 122], "red", { value: 36 }),
  bisque("garlic jar lid", "lid", 2, [92, 40], "red", { value: 2 }),
  bisque("cake stand", "plate", 1, [262, 92], "buff", { value: 85, due: 26, note: "Edda's birthday" }),
  once("seed dish", "bowl", 6, [96, 34], "buff", "ash", { value: 14 }),
  once("moss planter", "box", 2, [182, 92, 122], "buff", "moss", { value: 48 }),
  once("plain beaker", "beaker", 6, [78, 96], "buff", "oat", { value: 18 }),
  finished("first tea bowl", "bowl", 2, [110, 74], "buff", "ash", { value: 32 }),
  finished("small ring bowl", "bowl", 6, [60, 32], "white", "tide", { value: 12 }),
  finished("trial beaker", "beaker", 3, [66, 78], "white", "slate", { value: 16 }),
];
