import type { UpkeepRecord } from "../records/upkeep-record.ts";
import type { DemoTime } from "./demo-time.ts";

/** What was done to keep the demo's kilns in repair: elements of three circuits, measured now and then. */
export function demoUpkeep(
  kilns: { readonly big: string; readonly small: string },
  time: DemoTime,
  newId: () => string,
): UpkeepRecord[] {
  const entry = (
    kilnId: string,
    daysAgo: number,
    what: UpkeepRecord["what"],
    more: Pick<UpkeepRecord, "ohms" | "count"> = {},
    note = "",
  ): UpkeepRecord => {
    const at = time.ago(daysAgo);
    return { id: newId(), kilnId, at, what, note, ...more, createdAt: at, changedAt: at };
  };
  return [
    entry(kilns.big, 59, "elements changed", {}, "All three; the electrician did the terminals."),
    entry(kilns.big, 58.5, "element resistance", { ohms: [30.4, 31.1, 30.6] }, "Cold, plug out."),
    entry(kilns.big, 52, "shelf washed", { count: 4 }),
    entry(kilns.big, 40, "element resistance", { ohms: [30.7, 31.3, 30.9] }),
    entry(kilns.big, 35, "shelf turned", { count: 4 }),
    entry(kilns.big, 23, "shelf cracked", { count: 1 }, "A half shelf, a hair from the edge."),
    entry(kilns.big, 12, "element resistance", { ohms: [31.1, 31.7, 31.2] }),
    entry(kilns.big, 11, "shelf washed", { count: 3 }),
    entry(kilns.small, 30, "probe changed", {}, "The old one read twenty low."),
    entry(kilns.small, 30, "other", {}, "New plug for the spyhole."),
  ];
}
