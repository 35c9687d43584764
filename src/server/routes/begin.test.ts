import { expect, test } from "vitest";
import type { StudioCard } from "../../studio/api/contract.ts";
import { testStudio } from "../testing/test-studio.ts";

test("a new studio begins once: with the demo, whose load can be printed at once", async () => {
  const studio = await testStudio();
  const begin = (how: string) => studio.ask("POST", "/begin", { payload: JSON.stringify({ with: how }) });
  expect(((await studio.ask("GET", "/studio")).json() as StudioCard).isNew).toBe(true);
  const card = (await begin("demo")).json() as StudioCard;
  expect(card.isNew).toBe(false);
  expect(card.counts.ware).toBeGreaterThan(5);
  expect(card.counts.kilns).toBeGreaterThan(0);
  const loads = (await studio.ask("GET", "/loads")).json() as { id: string; plan: object | null }[];
  const planned = loads.find(({ plan }) => plan !== null);
  expect((await studio.ask("GET", `/loads/${planned?.id}/sheet`)).statusCode).toBe(200);
  for (const how of ["demo", "empty"]) {
    const again = await begin(how);
    expect([again.statusCode, again.json().error.code]).toEqual([409, "begun-already"]);
  }
  await studio.end();
});

test("or with nothing, and is new no longer", async () => {
  const studio = await testStudio();
  const answer = await studio.ask("POST", "/begin", { payload: JSON.stringify({ with: "empty" }) });
  expect(answer.json()).toMatchObject({ isNew: false, counts: { ware: 0, kilns: 0 } });
  expect(((await studio.ask("GET", "/studio")).json() as StudioCard).isNew).toBe(false);
  const odd = await studio.ask("POST", "/begin", { payload: JSON.stringify({ with: "luck" }) });
  expect([odd.statusCode, odd.json().error.code]).toEqual([400, "wrong-value"]);
  await studio.end();
});
