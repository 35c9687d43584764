import { expect, test } from "vitest";
import { findActions } from "./find-actions.ts";

const actions = [
  { name: "Turn the piece", group: "Load" },
  { name: "Take the piece out", group: "Load" },
  { name: "Loads", group: "Go to" },
  { name: "Waiting", group: "Go to" },
  { name: "Add a batch of ware", group: "Waiting" },
  { name: "Café lights", group: "Studio" },
];
const found = (typed: string) => findActions(actions, typed).map(({ name }) => name);

test("nothing typed finds everything, as it stands", () => {
  expect(found("  ")).toEqual(actions.map(({ name }) => name));
});

test("each word typed must fit a word of the name or group; a word's beginning counts for more than its middle", () => {
  expect(found("piece")).toEqual(["Turn the piece", "Take the piece out"]);
  expect(found("turn load")).toEqual(["Turn the piece"]);
  expect(found("load")[0]).toBe("Loads");
  expect(found("piece kiln")).toEqual([]);
});

test("the name counts for more than the group", () => {
  expect(found("waiting")).toEqual(["Waiting", "Add a batch of ware"]);
});

test("letters left out and accents do no harm", () => {
  expect(found("btch")).toEqual(["Add a batch of ware"]);
  expect(found("cafe")).toEqual(["Café lights"]);
});
