import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { checkPlan } from "../../loading/checker/check-plan.ts";
import { readLoadPlan } from "../../loading/read-load-plan.ts";
import { readLoadRequest } from "../../loading/read-load-request.ts";
import type { HistoryEntry, PlanEvent, PlanWish } from "../../studio/api/contract.ts";
import type { KilnRecord } from "../../studio/records/kiln-record.ts";
import type { LoadRecord } from "../../studio/records/load-record.ts";
import { listen } from "../testing/listen.ts";
import { type TestStudio, testStudio } from "../testing/test-studio.ts";

const STAMP = "2026-11-20T08:30:00.000Z";
const kiln: KilnRecord = {
  id: "k1",
  kiln: { name: "back room", chamber: { shape: "polygon", sides: 8, acrossFlatsMm: 430, depthMm: 460 } },
  furniture: {
    shelves: [{ name: "full", shape: "disc", diameterMm: 390, thicknessMm: 16, count: 3 }],
    posts: [
      { heightMm: 25, widthMm: 35, shape: "square", count: 3 },
      { heightMm: 100, widthMm: 35, shape: "square", count: 6 },
    ],
  },
  rules: {},
  createdAt: STAMP,
  changedAt: STAMP,
};
/** More than the kiln holds, where `many`: then the search goes on until it is stopped. */
const loadOf = (id: string, many = 1): LoadRecord => ({
  id,
  kilnId: "k1",
  name: id,
  state: "planned",
  request: {
    format: "load-request/1",
    kiln: kiln.kiln,
    furniture: kiln.furniture,
    ware: [
      { name: "cup", count: 9 * many, diameterMm: 70, heightMm: 65 },
      { name: "bowl", count: 6 * many, diameterMm: 140, heightMm: 80, value: 3, mustFire: true },
    ],
  },
  plan: null,
  pins: [],
  ticks: [],
  sources: [],
  version: 1,
  createdAt: STAMP,
  changedAt: STAMP,
});

let studio: TestStudio;
let address: string;
beforeAll(async () => {
  studio = await testStudio();
  address = await studio.app.listen({ port: 0, host: "127.0.0.1" });
  await studio.store.write(async (records) => {
    await records.kilns.add(kiln);
    await records.loads.add(...["kept", "around"].map((id) => loadOf(id)));
    await records.loads.add(...["stopped", "again", "changed"].map((id) => loadOf(id, 20)));
    const { request, ...rest } = loadOf("impossible");
    const ware = [{ name: "bowl", count: 6, diameterMm: 140, heightMm: 700 }];
    await records.loads.add({ ...rest, request: { ...request, ware } });
  });
});
afterAll(() => studio.end());

const post = (path: string, body: unknown) => studio.ask("POST", path, { payload: JSON.stringify(body) });
const begin = async (wish: PlanWish): Promise<string> => {
  const answer = await post("/plans", wish);
  expect([answer.statusCode, answer.body]).toEqual([200, expect.stringContaining("jobId")]);
  return (answer.json() as { jobId: string }).jobId;
};
const eventsOf = (jobId: string, enough?: (event: PlanEvent) => boolean) =>
  listen<PlanEvent>(`${address}/api/plans/${jobId}/events`, enough);
const load = async (id: string): Promise<LoadRecord> => (await studio.ask("GET", `/loads/${id}`)).json() as LoadRecord;
const ofKind = <Kind extends PlanEvent["kind"]>(events: readonly PlanEvent[], kind: Kind) =>
  events.filter((event): event is Extract<PlanEvent, { kind: Kind }> => event.kind === kind);

describe("planning a load", () => {
  test("tells better and better plans, keeps the last, and can be taken back", async () => {
    const events = await eventsOf(await begin({ loadId: "kept", keep: "nothing", seconds: 1 }));
    const better = ofKind(events, "better");
    expect(better.length).toBeGreaterThan(0);
    for (const [i, event] of better.entries()) {
      expect(event.value).toBeGreaterThanOrEqual(better[i - 1]?.value ?? 0);
    }
    const [end] = ofKind(events, "kept");
    expect(events.at(-1)).toBe(end);
    const now = await load("kept");
    expect(end?.answer.changed.loads?.kept).toEqual(now);
    expect(now.plan?.levels).toEqual(better.at(-1)?.plan.levels);
    const request = readLoadRequest(now.request);
    expect(checkPlan(request, readLoadPlan(now.plan, request))).toEqual([]);

    const [entry] = (await studio.ask("GET", "/history?scope=load%3Akept")).json() as HistoryEntry[];
    expect(entry?.summary).toBe(`Planned ${better.at(-1)?.pieces} pieces`);
    expect((await post("/undo", { scope: "load:kept" })).statusCode).toBe(200);
    expect((await load("kept")).plan).toBeNull();
    await post("/redo", { scope: "load:kept" });
  });

  test("whoever comes later hears the best and the end", async () => {
    const jobId = await begin({ loadId: "kept", keep: "all", seconds: 0.3 });
    const events = await eventsOf(jobId);
    expect(await eventsOf(jobId)).toEqual(events.slice(-2));
  });

  test("around what is pinned, the pinned piece stays and its pin with it", async () => {
    await eventsOf(await begin({ loadId: "around", keep: "nothing", seconds: 0.5 }));
    const before = await load("around");
    const pin = { level: 0, placement: 0 };
    await post("/commands/change-load", {
      key: "pin",
      input: { id: "around", version: before.version, pins: [pin], note: "pinned it" },
    });
    const events = await eventsOf(await begin({ loadId: "around", keep: "pinned", seconds: 0.5, seed: 9 }));
    expect(["kept", "not-kept"]).toContain(events.at(-1)?.kind);
    const after = await load("around");
    const piece = before.plan?.levels[0]?.placements[0];
    const [moved] = after.pins;
    expect(after.pins).toHaveLength(1);
    expect(after.plan?.levels[moved?.level ?? -1]?.placements[moved?.placement ?? -1]).toEqual(piece);
  });

  test("a load that was changed meanwhile keeps its change", async () => {
    // More than the kiln holds, and long enough: the change comes while it still looks, however fast or busy the machine.
    const jobId = await begin({ loadId: "changed", keep: "nothing", seconds: 4 });
    const events = eventsOf(jobId);
    await eventsOf(jobId, ({ kind }) => kind === "better");
    await post("/commands/change-load", { key: "rename", input: { id: "changed", version: 1, name: "another name" } });
    const end = (await events).at(-1);
    expect(end).toMatchObject({ kind: "not-kept", reason: expect.stringContaining("was changed") });
    expect(await load("changed")).toMatchObject({ name: "another name", plan: null });
  });

  test("stopped, it ends at once with the best so far and changes nothing", async () => {
    const jobId = await begin({ loadId: "stopped", keep: "nothing", seconds: 60 });
    const events = eventsOf(jobId);
    await eventsOf(jobId, ({ kind }) => kind === "better");
    expect((await studio.ask("DELETE", `/plans/${jobId}`)).statusCode).toBe(204);
    const heard = await events;
    expect(heard.slice(-2).map(({ kind }) => kind)).toEqual(["better", "stopped"]);
    expect((await load("stopped")).plan).toBeNull();
  });

  test("begun anew for the same load, the earlier one is stopped; the third in line waits its turn", async () => {
    const long = { keep: "nothing", seconds: 60 } as const;
    const first = await begin({ loadId: "again", ...long });
    const second = await begin({ loadId: "stopped", ...long });
    const third = await begin({ loadId: "around", keep: "all", seconds: 0.3 });
    const anew = await begin({ loadId: "again", ...long });
    expect((await eventsOf(first)).at(-1)?.kind).toBe("stopped");
    expect(["kept", "not-kept"]).toContain((await eventsOf(third)).at(-1)?.kind);
    for (const jobId of [second, anew]) await studio.ask("DELETE", `/plans/${jobId}`);
    for (const jobId of [second, anew]) expect((await eventsOf(jobId)).at(-1)?.kind).toBe("stopped");
  });

  test("where no load can be made, the reasons say why", async () => {
    const events = await eventsOf(await begin({ loadId: "impossible", keep: "nothing", seconds: 0.5 }));
    expect(events).toEqual([{ kind: "impossible", reasons: [expect.stringMatching(/bowl/)] }]);
    expect((await load("impossible")).plan).toBeNull();
  });

  test("what there is none of, or no sense in, is refused", async () => {
    const refused = async (wish: object) => {
      const answer = await post("/plans", wish);
      return [answer.statusCode, answer.json().error.code];
    };
    expect(await refused({ loadId: "gone", keep: "nothing" })).toEqual([404, "unknown-record"]);
    expect(await refused({ loadId: "kept", keep: "some" })).toEqual([400, "wrong-value"]);
    expect(await refused({ loadId: "kept", keep: "all", seconds: 1e9 })).toEqual([400, "out-of-range"]);
    expect(await refused({ loadId: "kept", keep: "all", seconds: "2" })).toEqual([400, "not-a-number"]);
    for (const path of ["/plans/gone/events", "/plans/gone"]) {
      const answer = await studio.ask(path.endsWith("events") ? "GET" : "DELETE", path);
      expect([answer.statusCode, answer.json().error.code]).toEqual([404, "unknown-job"]);
    }
  });
});

test("a server that stops stops its planning and lets its listeners go", async () => {
  const other = await testStudio();
  await other.store.write(async (records) => {
    await records.kilns.add(kiln);
    await records.loads.add(loadOf("l1", 20));
  });
  const at = await other.app.listen({ port: 0, host: "127.0.0.1" });
  const { jobId } = (
    await other.ask("POST", "/plans", { payload: JSON.stringify({ loadId: "l1", keep: "nothing", seconds: 600 }) })
  ).json() as { jobId: string };
  const listening = [listen<PlanEvent>(`${at}/api/plans/${jobId}/events`), listen(`${at}/api/events`)] as const;
  await listen<PlanEvent>(`${at}/api/plans/${jobId}/events`, ({ kind }) => kind === "better");
  await other.end();
  expect((await listening[0]).at(-1)?.kind).toBe("stopped");
  expect(await listening[1]).toEqual([]);
});
