import { describe, expect, test } from "vitest";
import { chooseOnly, chooseThrough, NOTHING_CHOSEN, stillThere, toggleOne } from "./selection.ts";

const shown = ["a", "b", "c", "d", "e"];
const ids = (selection: { ids: ReadonlySet<string> }): string[] => [...selection.ids].sort();

describe("choosing batches", () => {
  test("one press puts a batch in, the next takes it out", () => {
    const once = toggleOne(NOTHING_CHOSEN, "b");
    expect(ids(once)).toEqual(["b"]);
    expect(ids(toggleOne(once, "b"))).toEqual([]);
  });

  test("with shift held, all shown between the last press and this one go in, in either direction", () => {
    expect(ids(chooseThrough(toggleOne(NOTHING_CHOSEN, "b"), "d", shown))).toEqual(["b", "c", "d"]);
    expect(ids(chooseThrough(toggleOne(NOTHING_CHOSEN, "d"), "b", shown))).toEqual(["b", "c", "d"]);
  });

  test("a stretch adds to what is chosen, and another can follow it", () => {
    const first = chooseThrough(toggleOne(NOTHING_CHOSEN, "a"), "b", shown);
    const second = toggleOne(first, "d");
    expect(ids(chooseThrough(second, "e", shown))).toEqual(["a", "b", "d", "e"]);
  });

  test("a stretch from a batch that is not shown is one press", () => {
    expect(ids(chooseThrough(toggleOne(NOTHING_CHOSEN, "gone"), "b", shown))).toEqual(["b", "gone"]);
  });

  test("what is taken out of the studio is no longer chosen", () => {
    const three = chooseOnly(["a", "b", "c"]);
    expect(ids(stillThere(three, new Set(["a", "c"])))).toEqual(["a", "c"]);
    expect(stillThere(three, new Set(shown))).toBe(three);
  });
});
