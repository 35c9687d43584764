import { describe, expect, test } from "vitest";
import { batch, load } from "../testing/example-load.ts";
import { loadFacts } from "./load-facts.ts";
import { loadGroups, tries } from "./load-groups.ts";

const mugs = batch("mug", { dueOn: "2026-12-20" });
const bowls = batch("bowl", { dueOn: "2026-12-01" });
const later = (hour: string) => `2026-11-02T${hour}:00:00.000Z`;

describe("loads by how far they have come", () => {
  const first = load("a", [mugs], null, { createdAt: later("08") });
  const other = load("b", [mugs], null, { createdAt: later("07"), alternativeOf: "a", changedAt: later("12") });
  const third = load("c", [mugs], null, { changedAt: later("10") });
  const done = load("d", [mugs], null, { state: "unpacked" });
  const busy = load("e", [mugs], null, { state: "loading" });

  test("what has her hands on it first, what is done last; none is lost", () => {
    const groups = loadGroups([done, third, busy, other, first]);
    expect(groups.map(({ state }) => state)).toEqual(["loading", "planned", "unpacked"]);
    expect(groups.flatMap(({ families }) => families.flatMap(({ loads }) => loads)).length).toBe(5);
  });

  test("alternatives stand together behind their first, the family changed last on top", () => {
    const planned = loadGroups([third, other, first]).find(({ state }) => state === "planned");
    expect(planned?.families.map(({ loads }) => loads.map(({ id }) => id))).toEqual([["a", "b"], ["c"]]);
  });

  test("an alternative whose first is gone or farther on still shows", () => {
    const alone = loadGroups([other])[0]?.families;
    expect(alone?.map(({ loads }) => loads.map(({ id }) => id))).toEqual([["b"]]);
    const ahead = loadGroups([{ ...first, state: "fired" }, other]);
    expect(ahead.map(({ state, families }) => [state, families.length])).toEqual([
      ["planned", 1],
      ["fired", 1],
    ]);
  });

  test("the tries at one firing are the same, whichever of them is asked", () => {
    expect(tries([third, other, first], other).map(({ id }) => id)).toEqual(["a", "b"]);
    expect(tries([third, other, first], first).map(({ id }) => id)).toEqual(["a", "b"]);
    expect(tries([third, other, { ...first, state: "loading" }], other).map(({ id }) => id)).toEqual(["b"]);
  });
});

describe("what a card says of a load", () => {
  test("before it is planned: what was to go in", () => {
    expect(loadFacts(load("a", [mugs, bowls], null), [mugs, bowls])).toEqual({
      placed: null,
      waiting: 12,
      leftOut: [],
      kinds: ["glaze"],
      cones: ["6"],
      due: ["2026-12-01", "2026-12-20"],
    });
  });

  test("once planned: what stands in it; a batch of which nothing stands in it speaks no more", () => {
    const facts = loadFacts(load("a", [mugs, bowls], ["mug", "mug"]), [mugs, bowls]);
    expect(facts).toMatchObject({ placed: 2, waiting: 12, due: ["2026-12-20"] });
  });

  test("a batch that is gone is passed over", () => {
    expect(loadFacts(load("a", [mugs], ["mug"]), [])).toMatchObject({ placed: 1, kinds: [], due: [], cones: ["6"] });
  });
});
