import type { LoadRecord } from "../../studio/records/load-record.ts";

/** A screen of the application by name and address. */
export interface Screen {
  readonly name: string;
  readonly path: string;
}

/** Every screen of a studio that has a kiln and loads. */
export async function screensOf(address: string): Promise<Screen[]> {
  const records = async <Kept>(kind: string): Promise<Kept[]> => {
    const answer = await fetch(`${address}/api/${kind}`);
    return (await answer.json()) as Kept[];
  };
  const [kiln] = await records<{ id: string }>("kilns");
  const loads = await records<LoadRecord>("loads");
  const planned = loads.find((load) => load.plan !== null && load.state === "planned") ?? loads[0];
  const loading = loads.find((load) => load.state === "loading") ?? planned;
  return [
    { name: "waiting", path: "/" },
    { name: "kilns", path: "/kilns" },
    { name: "kiln", path: `/kilns/${kiln?.id}` },
    { name: "loads", path: "/loads" },
    { name: "load", path: `/loads/${planned?.id}` },
    { name: "compare", path: `/loads/compare/${planned?.id}` },
    { name: "in-space", path: `/loads/${planned?.id}/in-space` },
    { name: "at-the-kiln", path: `/loads/${loading?.id}/at-the-kiln` },
    { name: "materials", path: "/materials" },
    { name: "settings", path: "/settings" },
  ];
}
