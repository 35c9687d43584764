import { gzipSync } from "node:zlib";
import type { Response } from "playwright-core";
import type { Row } from "../row.ts";
import { measuredPage } from "./measured-page.ts";
import type { Studios } from "./studios.ts";

const MOST_BYTES = 150_000;

/** Every script the browser fetches from an empty profile until what waits is listed, gzipped. */
export async function firstScreen({ browser, demo }: Studios) {
  const page = await measuredPage(browser, demo);
  const answers: Response[] = [];
  page.on("response", (answer) => {
    if (answer.request().resourceType() === "script") answers.push(answer);
  });
  await page.goto("/");
  const listedMs = await page.evaluate<number>("measured.painted('[role=grid] tr')");
  const scripts = await Promise.all(
    answers.map(async (answer) => ({
      path: new URL(answer.url()).pathname,
      gzipBytes: gzipSync(await answer.body(), { level: 9 }).length,
    })),
  );
  await page.context().close();
  const bytes = scripts.reduce((sum, { gzipBytes }) => sum + gzipBytes, 0);
  const rows: Row[] = [
    {
      what: "first screen: script in gzip until the list stands",
      target: "≤ 150 kB",
      found: `${(bytes / 1000).toFixed(1)} kB in ${scripts.length} files; the list stands after ${listedMs.toFixed(0)} ms`,
      met: bytes <= MOST_BYTES,
    },
  ];
  return { rows, result: { bytes, listedMs, scripts } };
}
