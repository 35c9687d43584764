import { readFileSync } from "node:fs";
import { join, relative } from "node:path";
import { checkPlan } from "../loading/checker/check-plan.ts";
import { readLoadRequest } from "../loading/read-load-request.ts";
import { loadSheetPages } from "../sheets/load-sheet.ts";
import { pagesToSvg } from "../sheets/pages-to-svg.ts";
import { pagesToPdf } from "../sheets/pdf/pages-to-pdf.ts";
import { fontFaceCss } from "../sheets/pdf/sheet-fonts.ts";
import { planOnWorkers } from "../workers/plan-on-workers.ts";
import { type Command, printJson, printLines } from "./command.ts";
import { writeWholeFile } from "./files.ts";
import { choiceOption, unitsOption } from "./options.ts";
import { planText } from "./plan-text.ts";
import { terminalProgress } from "./progress.ts";

const EXAMPLE = new URL("../../examples/first-load/request.json", import.meta.url);

/** `wareboard demo`: what a newcomer sees first: an invented studio's load, planned, checked and drawn. */
export const demo: Command = {
  name: "demo",
  words: [],
  summary: "Plan an invented studio's load, check it, and draw its sheet: the quickest way to see what this is.",
  options: { out: { type: "string" }, paper: { type: "string" }, units: { type: "string" } },
  optionHelp: {
    out: "the folder to write to (wareboard-demo)",
    paper: "a4 or letter (a4)",
    units: "metric or inches (metric)",
  },
  examples: ["wareboard demo", "wareboard demo --paper letter --units inches"],
  run: async (call) => {
    const folder = typeof call.options.out === "string" ? call.options.out : "wareboard-demo";
    const paper = choiceOption(call, "paper", ["a4", "letter"], "a4");
    const units = unitsOption(call);
    const text = readFileSync(EXAMPLE, "utf8");
    const request = readLoadRequest(JSON.parse(text));
    const progress = terminalProgress(call.json);
    const outcome = await planOnWorkers(request, { seed: 1, seconds: 2, onProgress: progress.show }).finally(
      progress.clear,
    );
    if (outcome.kind === "impossible")
      throw new Error(`The demo's own request cannot be loaded: ${outcome.reasons[0]?.message}`);
    const plan = outcome.plan;
    const broken = checkPlan(request, plan);
    const pages = loadSheetPages(request, plan, { paper, units, broken });
    const place = (file: string): string => join(folder, file);
    writeWholeFile(place("request.json"), text);
    writeWholeFile(place("plan.json"), `${JSON.stringify(plan, null, 1)}\n`);
    writeWholeFile(place("sheet.svg"), pagesToSvg(pages, fontFaceCss()));
    writeWholeFile(place("sheet.pdf"), await pagesToPdf(pages));
    if (call.json)
      printJson({ plan, broken, files: ["request.json", "plan.json", "sheet.svg", "sheet.pdf"].map(place) });
    else {
      const shownFolder = relative(process.cwd(), folder) || folder;
      printLines([
        ...planText(request, plan, units),
        "",
        broken.length === 0 ? "  Checked: every rule is kept." : `  Checked: ${broken.length} rules are broken.`,
        "",
        `  The sheet to carry to the kiln: ${join(shownFolder, "sheet.pdf")}`,
        `  The request and the plan behind it: ${join(shownFolder, "request.json")}, ${join(shownFolder, "plan.json")}`,
        "",
        "  Now with your own kiln and pots: copy request.json, change it, and run",
        `    npx wareboard plan ${join(shownFolder, "request.json")} --out my-plan.json`,
        `    npx wareboard sheet ${join(shownFolder, "request.json")} my-plan.json --out my-sheet.pdf`,
      ]);
    }
    return broken.length === 0 ? 0 : 1;
  },
};
