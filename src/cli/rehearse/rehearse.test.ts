import type { ChildProcess } from "node:child_process";
import { once } from "node:events";
import { mkdirSync, mkdtempSync, readdirSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, expect, test } from "vitest";
import type { ShownReadings } from "../../studio/api/readings-contract.ts";
import type { FiringWatch } from "../../studio/api/watch-contract.ts";
import type { FiringRecord } from "../../studio/records/firing-record.ts";
import { runCommand } from "../testing/run-command.ts";
import { startCommand, startServer } from "../testing/run-server.ts";

const here = mkdtempSync(join(tmpdir(), "wareboard-rehearse-test-"));
afterAll(() => rmSync(here, { recursive: true, force: true }));

interface Rehearsal {
  readonly api: string;
  readonly firingId: string;
  readonly child: ChildProcess;
  /** Where it keeps what it needs, and should leave nothing. */
  readonly scratch: string;
}

async function rehearsal(name: string, ...more: string[]): Promise<Rehearsal> {
  const scratch = join(here, name);
  mkdirSync(scratch);
  const words = ["rehearse", "--json", "--no-open", "--port", "0", ...more];
  const { child, said } = await startCommand<{ address: string; firingId: string }>(words, {
    ...process.env,
    TMPDIR: scratch,
  });
  const { address, firingId } = said;
  return { api: `${new URL(address).origin}/api`, firingId, child, scratch };
}

const asked = async <Answer>(url: string): Promise<Answer> => (await (await fetch(url)).json()) as Answer;

async function watchUntil({ api, firingId }: Rehearsal, isSo: (watch: FiringWatch) => boolean): Promise<FiringWatch> {
  for (let i = 0; i < 200; i++) {
    const watch = await asked<FiringWatch>(`${api}/firings/${firingId}/watch`);
    if (isSo(watch)) return watch;
    await new Promise((resolve) => setTimeout(resolve, 100));
  }
  throw new Error("It did not come to that in twenty seconds.");
}

test("an invented kiln fires on the studio's own fast clock, is watched, and nothing is left of it", async () => {
  const begun = await rehearsal("demo", "--speed", "3600");
  const watch = await watchUntil(begun, ({ latest, heat }) => latest !== null && latest.tempC > 300 && heat.length > 0);
  expect(watch.pace).toBe(3600);
  expect(Date.parse(watch.now)).toBeLessThanOrEqual(Date.now());
  expect(Date.parse(watch.latest?.at ?? "")).toBeLessThanOrEqual(Date.parse(watch.now) + 1000);
  expect(watch.faults).toEqual([]);
  expect(watch.outlook?.cone?.cone).toBe("6");
  const { series } = await asked<ShownReadings>(`${begun.api}/firings/${begun.firingId}/readings?by=raw`);
  expect(series[0]?.tempC.length).toBeGreaterThan(100);
  begun.child.kill("SIGINT");
  const [code] = (await once(begun.child, "exit")) as [number];
  expect(code).toBe(0);
  expect(readdirSync(begun.scratch)).toEqual([]);
}, 60_000);

test("her own next load is fired in a copy; her studio stays as it is", async () => {
  const own = join(here, "own");
  const server = await startServer(own);
  await fetch(`${server.address}/api/begin`, {
    method: "POST",
    headers: { "content-type": "application/json" },
    body: JSON.stringify({ with: "demo" }),
  });
  const before = await asked<FiringRecord[]>(`${server.address}/api/firings`);
  // Hers is open all the while.
  const begun = await rehearsal("copy", "--speed", "600", "--data", own);
  const there = await asked<FiringRecord[]>(`${begun.api}/firings`);
  expect(there).toHaveLength(before.length + 1);
  expect(there.find(({ id }) => id === begun.firingId)?.name).toMatch(/^Rehearsal: /);
  await watchUntil(begun, ({ latest }) => latest !== null);
  begun.child.kill("SIGINT");
  await once(begun.child, "exit");
  expect(await asked<FiringRecord[]>(`${server.address}/api/firings`)).toEqual(before);
  await server.end("SIGTERM");
}, 60_000);

test("a folder without a studio is refused in words", () => {
  const { code, err } = runCommand(["rehearse", "--data", join(here, "nothing-there"), "--no-open"]);
  expect(code).toBe(2);
  expect(err).toContain("no studio in");
});
