import { type FormName, formOutline } from "../../ware/forms.ts";
import type { WareFile } from "../../ware/ware.ts";
import type { NewWare } from "../commands/ware-inputs.ts";

type Row = readonly [name: string, form: FormName, diameterMm: number, heightMm: number, count: number, glaze: string];

/** What the invented potter throws in a month, by turns: for the table, tall things, for the garden market, for the holidays. */
const TURNS: readonly (readonly Row[])[] = [
  [
    ["breakfast mug", "mug", 88, 95, 12, "moss"],
    ["soup bowl", "bowl", 150, 70, 8, "oat satin"],
    ["side plate", "plate", 165, 25, 6, "oat satin"],
    ["little beaker", "beaker", 70, 85, 10, "rain over slate"],
  ],
  [
    ["tall vase", "vase", 105, 205, 4, "hearth ash"],
    ["milk jug", "jug", 95, 120, 6, "moss"],
    ["tea bowl", "bowl", 115, 75, 10, "rain over slate"],
    ["espresso cup", "mug", 66, 62, 14, "oat satin"],
  ],
  [
    ["honey jar", "jar", 95, 110, 8, "oat satin"],
    ["noodle bowl", "bowl", 165, 85, 6, "moss"],
    ["bud vase", "vase", 62, 130, 10, "hearth ash"],
    ["dipping dish", "plate", 90, 30, 12, "rain over slate"],
  ],
  [
    ["breakfast mug", "mug", 88, 95, 14, "oat satin"],
    ["salad bowl", "bowl", 185, 80, 4, "moss"],
    ["straight beaker", "beaker", 78, 100, 10, "hearth ash"],
    ["oil bottle", "bottle", 80, 165, 5, "rain over slate"],
  ],
];

/** Batches of a month's throwing: raw and dry, to be bisqued. */
export function thrownIn(month: number): NewWare[] {
  const rows = TURNS[month % TURNS.length] as readonly Row[];
  return rows.map(([name, form, diameterMm, heightMm, count]): NewWare => {
    const { profile, handle, spout, ...outline } = formOutline(form, { diameterMm, heightMm });
    const ware: WareFile = {
      ...{ name: `${name}, ${ordinal(month)}`, count, form, cone: "05", ...outline, value: 10 },
      ...(profile ? { profile } : {}),
      ...(handle ? { handle } : {}),
      ...(spout ? { spout } : {}),
    };
    return {
      ...{ id: `ware-${month}-${name.replaceAll(" ", "-")}`, ware, stage: "greenware", firingKind: "bisque" },
      ...{ dueOn: null, ownerNote: "", clayBodyId: null, glazeId: null },
    };
  });
}

/** The glaze that a batch gets, by what it is called. */
export function glazeFor(name: string): string {
  const thing = name.split(",")[0];
  return TURNS.flat().find(([each]) => each === thing)?.[5] ?? "oat satin";
}

/** Glazes that run, and stick where they were fired too hot. */
export const RUNNING_GLAZES: ReadonlySet<string> = new Set(["rain over slate", "hearth ash"]);

const ordinal = (month: number): string => `batch ${month + 1}`;
