import { describe, expect, test } from "vitest";
import { withOne } from "./editing.ts";

describe("changing one of a list", () => {
  test("changes that one and leaves the others as they are", () => {
    const list = [{ n: 1 }, { n: 2 }, { n: 3 }];
    const changed = withOne(list, 1, ({ n }) => ({ n: n * 10 }));
    expect(changed).toEqual([{ n: 1 }, { n: 20 }, { n: 3 }]);
    expect(changed[0]).toBe(list[0]);
  });
  test("takes it out where nothing is left of it", () => expect(withOne([1, 2, 3], 0, () => null)).toEqual([2, 3]));
  test("changes nothing where it is not there", () => expect(withOne([1, 2], 5, () => null)).toEqual([1, 2]));
});
