import { queries } from "./cache.ts";
import { answering } from "./connection.ts";
import { read } from "./read.ts";

/** What a phone needs at the kiln and a desktop on the next screen, the most wanted first. */
const AHEAD = [
  "settings",
  "loads",
  "ware",
  "kilns",
  "firings",
  "clayBodies",
  "glazes",
  "photos",
  "programmes",
  "calibrations",
];
const AFTER_MS = 1500;

/** Reads what the other screens will ask for, once this one is drawn: so that they open at once, and without a network. */
export function readAhead(): void {
  setTimeout(async () => {
    for (const path of AHEAD) {
      if (!answering.get()) return;
      await queries.prefetchQuery({ queryKey: [path], queryFn: () => read(path) });
    }
  }, AFTER_MS);
}
