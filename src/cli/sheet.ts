import { checkPlan } from "../loading/checker/check-plan.ts";
import { BadInput, shown } from "../measures/bad-input.ts";
import { loadSheetPages } from "../sheets/load-sheet.ts";
import { pagesToSvg } from "../sheets/pages-to-svg.ts";
import { pagesToPdf } from "../sheets/pdf/pages-to-pdf.ts";
import { type Command, type ExitCode, printJson, printLines } from "./command.ts";
import { readPlanFile, readRequestFile, writeWholeFile } from "./files.ts";
import { choiceOption, unitsOption } from "./options.ts";

/** `wareboard sheet`: the pages to carry to the kiln. */
export const sheet: Command = {
  name: "sheet",
  words: ["REQUEST.json", "PLAN.json"],
  summary: "Draw the sheet to carry to the kiln: every level to scale, the loading order, the counts, the cautions.",
  options: { out: { type: "string" }, paper: { type: "string" }, units: { type: "string" } },
  optionHelp: {
    out: "the file to write, .pdf or .svg",
    paper: "a4 or letter (a4)",
    units: "metric or inches (metric)",
  },
  examples: [
    "wareboard sheet examples/first-load/request.json plan.json --out sheet.pdf",
    "wareboard sheet request.json plan.json --out sheet.pdf --paper letter --units inches",
  ],
  run: async (call): Promise<ExitCode> => {
    const out = call.options.out;
    if (typeof out !== "string" || !/\.(pdf|svg)$/i.test(out)) {
      throw new BadInput({
        code: "wrong-option",
        path: "--out",
        found: shown(out),
        expected: "a file ending in .pdf or .svg",
      });
    }
    const request = readRequestFile(call.words[0] as string);
    const plan = readPlanFile(call.words[1] as string, request);
    const paper = choiceOption(call, "paper", ["a4", "letter"], "a4");
    const broken = checkPlan(request, plan);
    const pages = loadSheetPages(request, plan, { paper, units: unitsOption(call), broken });
    writeWholeFile(out, /\.pdf$/i.test(out) ? await pagesToPdf(pages) : pagesToSvg(pages));
    if (call.json) printJson({ out, pages: pages.length, broken });
    else {
      printLines([`${out}: ${pages.length} pages.`, ...broken.map((each) => `  Careful: ${each.message}`)]);
    }
    return 0;
  },
};
