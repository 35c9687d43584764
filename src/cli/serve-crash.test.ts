import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, expect, test } from "vitest";
import { seededChance } from "../measures/seeded-chance.ts";
import { startServer } from "./testing/run-server.ts";

const ROUNDS = 10;
const LONGEST_LIFE_MS = 150;
const folder = mkdtempSync(join(tmpdir(), "wareboard-crash-"));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

/**
 * Sends commands one after another until the server is gone. Gives the ids of what was acknowledged, and tells of the
 * first.
 */
async function addUntilGone(address: string, name: string, onFirst: () => void): Promise<string[]> {
  const acknowledged: string[] = [];
  for (let n = 0; ; n++) {
    const id = `${name}-${n}`;
    const note = { id, aboutKind: null, aboutId: null, text: "x".repeat((n * 977) % 2000) + id };
    try {
      const answer = await fetch(`${address}/api/commands/add-note`, {
        method: "POST",
        headers: { "content-type": "application/json" },
        body: JSON.stringify({ key: `key-${id}`, input: note }),
      });
      expect([answer.status, await answer.text()]).toEqual([200, expect.stringContaining(id)]);
      if (acknowledged.push(id) === 1) onFirst();
    } catch (error) {
      if (error instanceof TypeError) return acknowledged;
      throw error;
    }
  }
}

test(`a server killed ${ROUNDS} times at random moments loses no command it has acknowledged, nor its history`, async () => {
  const chance = seededChance(20261125);
  const acknowledged: string[] = [];
  for (let round = 0; round < ROUNDS; round++) {
    const server = await startServer(folder);
    let added: Promise<string[]>[] = [];
    // A life begins with the first acknowledgement: on a busy machine that alone may take longer than the rest of it.
    await new Promise<void>((begun) => {
      added = ["a", "b"].map((who) => addUntilGone(server.address, `${who}${round}`, begun));
    });
    await new Promise((resolve) => setTimeout(resolve, chance.next() * LONGEST_LIFE_MS));
    expect(await server.end("SIGKILL")).toBe("SIGKILL");
    acknowledged.push(...(await Promise.all(added)).flat());
  }
  expect(acknowledged.length).toBeGreaterThan(ROUNDS);

  const server = await startServer(folder);
  const ask = async (path: string) => (await fetch(`${server.address}/api${path}`)).json();
  const kept = new Set(((await ask("/notes")) as { id: string }[]).map(({ id }) => id));
  expect(acknowledged.filter((id) => !kept.has(id))).toEqual([]);
  // What each command changed is written down in the same transaction as the change.
  const done = (await ask("/history?scope=notes")) as { id: string }[];
  const remembered = new Set(done.map(({ id }) => id));
  expect(acknowledged.slice(-100).filter((id) => !remembered.has(`key-${id}`))).toEqual([]);
  expect(await server.end("SIGTERM")).toBe(0);
});
