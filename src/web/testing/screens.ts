import { writeProgramme } from "../../firing/programme/write-programme.ts";
import type { FiringRecord } from "../../studio/records/firing-record.ts";
import type { LoadRecord } from "../../studio/records/load-record.ts";

/** A screen of the application by name and address. */
export interface Screen {
  readonly name: string;
  readonly path: string;
}

/** Every screen of a studio that has a kiln and loads. Where no firing is being prepared, one is. */
export async function screensOf(address: string): Promise<Screen[]> {
  const records = async <Kept>(kind: string): Promise<Kept[]> => {
    const answer = await fetch(`${address}/api/${kind}`);
    return (await answer.json()) as Kept[];
  };
  const loads = await records<LoadRecord>("loads");
  const planned = loads.find((load) => load.plan !== null && load.state === "planned") ?? loads[0];
  // The kiln of that load: it has the most to show.
  const kiln = planned && { id: planned.kilnId };
  const loading = loads.find((load) => load.state === "loading") ?? planned;
  const prepared = planned && (await preparedFiring(address, planned, await records<FiringRecord>("firings")));
  const watched = kiln && (await watchedFiring(address, kiln.id, await records<FiringRecord>("firings")));
  const finished = (await records<FiringRecord>("firings")).filter(({ state }) => state === "finished");
  const [fired] = finished;
  const judged = finished.find(({ loadId, outcomes }) => loadId !== null && outcomes !== undefined) ?? fired;
  return [
    { name: "waiting", path: "/" },
    { name: "kilns", path: "/kilns" },
    { name: "kiln", path: `/kilns/${kiln?.id}` },
    { name: "loads", path: "/loads" },
    { name: "load", path: `/loads/${planned?.id}` },
    { name: "compare", path: `/loads/compare/${planned?.id}` },
    { name: "in-space", path: `/loads/${planned?.id}/in-space` },
    { name: "at-the-kiln", path: `/loads/${loading?.id}/at-the-kiln` },
    { name: "firings", path: "/firings" },
    { name: "prepare", path: `/firings/${prepared}` },
    { name: "firing", path: `/firings/${fired?.id}` },
    { name: "watch", path: `/firings/${watched}/watch` },
    { name: "unload", path: `/firings/${judged?.id}/unload` },
    { name: "programmes", path: "/programmes" },
    { name: "learn", path: `/learn/${kiln?.id}` },
    { name: "upkeep", path: `/upkeep/${kiln?.id}` },
    { name: "money", path: "/money" },
    { name: "materials", path: "/materials" },
    { name: "settings", path: "/settings" },
  ];
}

/** The firing that is being prepared, or one made ready for this load. */
async function preparedFiring(address: string, load: LoadRecord, firings: readonly FiringRecord[]): Promise<string> {
  const open = firings.find(({ state }) => state === "planned");
  if (open) return open.id;
  const input = {
    id: "pictured",
    loadId: load.id,
    programme: writeProgramme({ cone: "6", kind: "glaze", pace: "medium" }).programme,
  };
  const answer = await fetch(`${address}/api/commands/prepare-firing`, {
    method: "POST",
    headers: { "content-type": "application/json" },
    body: JSON.stringify({ key: "pictured", input }),
  });
  if (!answer.ok) throw new Error(`No firing could be prepared: ${await answer.text()}`);
  return input.id;
}

/** A firing under way, or one begun three hours ago whose readings run ahead of its programme: what was noticed shows too. */
async function watchedFiring(address: string, kilnId: string, firings: readonly FiringRecord[]): Promise<string> {
  const underWay = firings.find(({ state }) => state === "firing" || state === "cooling");
  if (underWay) return underWay.id;
  const post = async (path: string, body: object, token?: string): Promise<unknown> => {
    const answer = await fetch(`${address}/api/${path}`, {
      method: "POST",
      headers: { "content-type": "application/json", ...(token && { authorization: `Bearer ${token}` }) },
      body: JSON.stringify(body),
    });
    if (!answer.ok) throw new Error(`No firing could be begun: ${await answer.text()}`);
    return answer.json();
  };
  const id = "watched";
  const minutesAgo = (minutes: number): string => new Date(Date.now() - minutes * 60_000).toISOString();
  const { programme } = writeProgramme({ cone: "6", kind: "glaze", pace: "medium" });
  const prepared = { id, loadId: null, kilnId, name: "a trial of slips", programme };
  await post("commands/prepare-firing", { key: "watched-1", input: prepared });
  await post("commands/start-firing", { key: "watched-2", input: { id, at: minutesAgo(180) } });
  const { token } = (await post("loggers", { kilnId, probe: "thermocouple", name: "pictures" })) as { token: string };
  const readings = Array.from({ length: 180 }, (_, i) => ({
    at: minutesAgo(179 - i),
    tempC: 20 + Math.round(2.4 * i),
  }));
  await post("readings", { readings }, token);
  return id;
}
