// `node src/cli/testing/make-demo-year.ts`: lives the demo's year again and writes it down as data for `beginWithDemo`.
import { writeFileSync } from "node:fs";
import { studioInUse } from "../../store/testing/studio-in-use.ts";
import { keptYear } from "../../studio/year/testing/kept-year.ts";
import { DEMO_YEAR, yearAsData } from "../../studio/year/year-data.ts";
import { liveYear } from "../../studio/year/year-studio.ts";

const place = new URL("../../studio/year/made-year.ts", import.meta.url);
const studio = await studioInUse();
await liveYear({ store: studio.store, ...DEMO_YEAR });
const text = JSON.stringify(yearAsData(await keptYear(studio.store)));
await studio.end();
writeFileSync(
  place,
  `// Made by \`node src/cli/testing/make-demo-year.ts\`; not to be changed by hand.

/** The demo's past year, as JSON text (year-data.ts says how). */
export const MADE_YEAR = ${JSON.stringify(text)};
`,
);
process.stdout.write(`${place.pathname}: ${Math.round(text.length / 1024)} kB\n`);
