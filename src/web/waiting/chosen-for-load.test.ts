import { expect, test } from "vitest";
import { chosenForLoad, newLoadAddress } from "./chosen-for-load.ts";

const ids = (count: number): string[] => Array.from({ length: count }, (_, i) => `w${i}`);
const back = (address: string): string[] => chosenForLoad(address.slice(address.indexOf("?")));

test("what is chosen comes back from the address, few or many", () => {
  // Node has no tab to keep them in: then even a thousand go into the address.
  for (const count of [1, 40, 41, 1000]) expect(back(newLoadAddress(ids(count)))).toEqual(ids(count));
  expect(chosenForLoad("?new=1")).toEqual([]);
});
