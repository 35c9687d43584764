import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, expect, test } from "vitest";
import { seededChance } from "../measures/seeded-chance.ts";
import { newToken } from "../server/readings/loggers.ts";
import { prepareDataFolder, storeFile } from "../server/running/data-folder.ts";
import { openSqliteStore } from "../store/sqlite-store.ts";
import * as sample from "../store/testing/sample-records.ts";
import { startServer } from "./testing/run-server.ts";

const ROUNDS = 6;
const LONGEST_LIFE_MS = 200;
const LOGGERS = 3;
const STARTED_MS = Date.parse("2026-11-20T08:00:00.000Z");
const folder = mkdtempSync(join(tmpdir(), "wareboard-readings-"));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const { token, tokenHash } = newToken();
const moment = (second: number): string => new Date(STARTED_MS + second * 1000).toISOString();

/**
 * Sends readings, a second after another, until the server is gone. Gives the seconds that were acknowledged.
 *
 * @param onHeard called at each acknowledgement
 */
async function sendUntilGone(address: string, from: number, onHeard: () => void): Promise<number[]> {
  const acknowledged: number[] = [];
  for (let n = from; ; n += 3) {
    const readings = [n, n + 1, n + 2].map((second) => ({ at: moment(second), tempC: second % 1300 }));
    try {
      const answer = await fetch(`${address}/api/readings`, {
        method: "POST",
        headers: { "content-type": "application/json", authorization: `Bearer ${token}` },
        body: JSON.stringify({ readings }),
      });
      expect([answer.status, await answer.text()]).toEqual([200, '{"kept":3,"leftAside":0}']);
      acknowledged.push(n, n + 1, n + 2);
      onHeard();
    } catch (error) {
      if (error instanceof TypeError) return acknowledged;
      throw error;
    }
  }
}

test(`a server killed ${ROUNDS} times loses no reading it has acknowledged, and its roll-ups agree with what is kept`, async () => {
  prepareDataFolder(folder);
  const before = await openSqliteStore(storeFile(folder));
  await before.write(async (records) => {
    await sample.fillStudio(records);
    const course = { state: "firing", startedAt: moment(0), endedAt: null, loadId: null } as const;
    await records.firings.add({ ...sample.firing("hot"), kilnId: "kiln-2", ...course });
    const stamps = { createdAt: sample.MOMENT, changedAt: sample.MOMENT };
    await records.loggers.add({ id: "l", kilnId: "kiln-2", probe: "thermocouple", name: "shed", tokenHash, ...stamps });
  });
  await before.close();

  const chance = seededChance(20261125);
  const acknowledged: number[] = [];
  for (let round = 0; round < ROUNDS; round++) {
    const server = await startServer(folder);
    const heard = Promise.withResolvers<void>();
    const sent = Array.from({ length: LOGGERS }, (_, i) =>
      sendUntilGone(server.address, 1 + (round * LOGGERS + i) * 20_000, heard.resolve),
    );
    // However busy the machine is: so long after it has acknowledged something.
    await heard.promise;
    await new Promise((resolve) => setTimeout(resolve, chance.next() * LONGEST_LIFE_MS));
    expect(await server.end("SIGKILL")).toBe("SIGKILL");
    acknowledged.push(...(await Promise.all(sent)).flat());
  }
  expect(acknowledged.length).toBeGreaterThanOrEqual(ROUNDS * 3);

  const store = await openSqliteStore(storeFile(folder));
  const [[raw], [hours]] = await store.read(async ({ readings }) => [
    await readings.of("hot"),
    await readings.rolledUp("hot", "hour"),
  ]);
  await store.close();
  const kept = new Map(raw?.readings.map(({ at, tempC }) => [at, tempC]));
  expect(acknowledged.filter((second) => kept.get(moment(second)) !== second % 1300)).toEqual([]);
  expect(hours?.rollUps.reduce((sum, { count }) => sum + count, 0)).toBe(kept.size);
});
