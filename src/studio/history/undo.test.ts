import { afterAll, beforeAll, expect, test } from "vitest";
import { BadInput } from "../../measures/bad-input.ts";
import { seededChance } from "../../measures/seeded-chance.ts";
import { type StudioInUse, studioInUse } from "../../store/testing/studio-in-use.ts";
import { history, redo, undo } from "./undo.ts";

let studio: StudioInUse;
beforeAll(async () => {
  studio = await studioInUse();
});
afterAll(() => studio.end());

// Three scopes, each with records of its own kind, so that each must go back and forth by itself.
const SCOPES = { notes: "notes", materials: "clayBodies", ware: "ware" } as const;
type Scope = keyof typeof SCOPES;

const batch = (n: number) => ({
  ...{ stage: "bisque", firingKind: null, dueOn: null, ownerNote: "", clayBodyId: null, glazeId: null },
  ware: { name: `bowl ${n}`, count: 1 + (n % 5), diameterMm: 100, heightMm: 60 },
});

/** Something to do in a scope with what is there: put in, change or take out. */
function doing(scope: Scope, ids: readonly string[], n: number, which: number): [command: string, input: object] {
  const id = ids[which % Math.max(1, ids.length)];
  const change = which % 3;
  if (id === undefined || change === 0) {
    if (scope === "notes") return ["add-note", { aboutKind: null, aboutId: null, text: `note ${n}` }];
    if (scope === "materials") return ["add-clay-body", { name: `clay ${n}`, cones: null, note: "" }];
    return ["add-ware", { ware: [batch(n), batch(n + 1)] }];
  }
  if (scope === "notes") return change === 1 ? ["change-note", { id, text: `note ${n}` }] : ["remove-note", { id }];
  if (scope === "materials") {
    return change === 1 ? ["change-clay-body", { id, name: `clay ${n}` }] : ["remove-clay-body", { id }];
  }
  return change === 1
    ? ["change-ware", { ids: ids.slice(0, 3), change: { ownerNote: `${n}` } }]
    : ["remove-ware", { ids: ids.slice(0, 2) }];
}

test("whatever is done, undone and done again in whatever order, each scope is where its own steps lead", async () => {
  const chance = seededChance(20261125);
  const pick = (below: number): number => Math.floor(chance.next() * below);
  const records = (scope: Scope) => studio.store.read<{ id: string }[]>((all) => all[SCOPES[scope]].list());
  // What each scope went through, and which of it holds now.
  const past = {
    notes: [await records("notes")],
    materials: [await records("materials")],
    ware: [await records("ware")],
  };
  const at = { notes: 0, materials: 0, ware: 0 };
  const done = { undo: 0, redo: 0, nothing: 0 };
  for (let n = 0; n < 160; n++) {
    const scope = (Object.keys(SCOPES) as Scope[])[pick(3)] as Scope;
    const what = pick(10);
    if (what < 5) {
      const now = past[scope][at[scope]] ?? [];
      await studio.give(
        ...doing(
          scope,
          now.map(({ id }) => id),
          n,
          pick(99),
        ),
      );
      past[scope] = [...past[scope].slice(0, at[scope] + 1), await records(scope)];
      at[scope]++;
    } else {
      const [step, by] = what < 8 ? ([undo, -1] as const) : ([redo, 1] as const);
      const isThere = past[scope][at[scope] + by] !== undefined;
      const answer = await step(studio.store, scope).catch((error: unknown) => {
        if (error instanceof BadInput) return error.code;
        throw error;
      });
      expect(answer).toEqual(isThere ? expect.objectContaining({}) : `nothing-to-${by < 0 ? "undo" : "redo"}`);
      if (isThere) at[scope] += by;
      done[isThere ? (by < 0 ? "undo" : "redo") : "nothing"]++;
    }
    for (const each of Object.keys(SCOPES) as Scope[]) expect(await records(each)).toEqual(past[each][at[each]]);
    const told = (await history(studio.store, scope)).map(({ undone }) => undone);
    expect(told.filter((undone) => undone)).toHaveLength(past[scope].length - 1 - at[scope]);
  }
  for (const times of Object.values(done)) expect(times).toBeGreaterThan(5);
}, 30_000);
