// Draws planned-load.svg beside itself, and planned-load.pdf to make the .png from: see README.md here.
import { readFileSync, writeFileSync } from "node:fs";
import { planLoad } from "../../src/loading/planner/plan-load.ts";
import { readLoadRequest } from "../../src/loading/read-load-request.ts";
import { loadSheetPages } from "../../src/sheets/load-sheet.ts";
import { pagesToSvg } from "../../src/sheets/pages-to-svg.ts";
import { pagesToPdf } from "../../src/sheets/pdf/pages-to-pdf.ts";
import { fontFaceCss } from "../../src/sheets/pdf/sheet-fonts.ts";

const example = new URL("../../examples/first-load/request.json", import.meta.url);
const request = readLoadRequest(JSON.parse(readFileSync(example, "utf8")));
const outcome = planLoad(request, { seed: 1, workLimit: 3_000_000 });
if (outcome.kind === "impossible") throw new Error(outcome.reasons[0]?.message);

const pages = loadSheetPages(request, outcome.plan, { paper: "a4", units: "metric" });
const counts = outcome.plan.levels.map((level) => level.placements.length);
const fullest = pages.find((page) => page.title === `Level ${counts.indexOf(Math.max(...counts)) + 1}`);
const picture = [pages[0], fullest].filter((page) => page !== undefined);
writeFileSync(new URL("planned-load.svg", import.meta.url), pagesToSvg(picture, fontFaceCss(), 2));
writeFileSync(new URL("planned-load.pdf", import.meta.url), await pagesToPdf(picture));
