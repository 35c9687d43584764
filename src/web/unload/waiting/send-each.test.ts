import { expect, test } from "vitest";
import { type SendPorts, sendEach, type WaitingSend } from "./send-each.ts";

const thing = (key: string): WaitingSend => ({ key, at: key, path: `/${key}`, about: key });

function ports(keys: string[], change: Partial<SendPorts> = {}) {
  const line = keys.map(thing);
  const log: string[] = [];
  const all: SendPorts = {
    all: async () => [...line],
    mayGo: () => true,
    send: async ({ key }) => void log.push(`sent ${key}`),
    isAway: (error) => error === "away",
    refused: ({ key }) => log.push(`refused ${key}`),
    done: async ({ key }) => {
      line.splice(
        line.findIndex((each) => each.key === key),
        1,
      );
    },
    ...change,
  };
  return { all, line, log };
}

test("what waits goes in order, and nothing waits any more", async () => {
  const { all, line, log } = ports(["a", "b"]);
  await sendEach(all);
  expect(log).toEqual(["sent a", "sent b"]);
  expect(line).toEqual([]);
});

test("where the studio is away, all of it stays", async () => {
  const { all, line } = ports(["a", "b"], { send: () => Promise.reject("away") });
  await sendEach(all);
  expect(line.map(({ key }) => key)).toEqual(["a", "b"]);
});

test("what is refused is told and let go; the rest goes on", async () => {
  const log: string[] = [];
  const { all, line } = ports(["a", "b"], {
    send: ({ key }) => (key === "a" ? Promise.reject("no") : Promise.resolve()),
    refused: ({ key }) => log.push(key),
  });
  await sendEach(all);
  expect(log).toEqual(["a"]);
  expect(line).toEqual([]);
});

test("nothing goes while it may not", async () => {
  const { all, log } = ports(["a"], { mayGo: () => false });
  await sendEach(all);
  expect(log).toEqual([]);
});
