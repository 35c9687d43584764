import { type Programme, readProgramme } from "../firing/programme/programme.ts";
import { checkPlan } from "../loading/checker/check-plan.ts";
import type { LoadPlan } from "../loading/load-plan.ts";
import type { LoadRequest } from "../loading/load-request.ts";
import { BadInput, shown } from "../measures/bad-input.ts";
import type { LengthUnits } from "../measures/length.ts";
import { firingPages } from "../sheets/firing/firing-pages.ts";
import { loadSheetPages } from "../sheets/load-sheet.ts";
import type { PageContent, Paper } from "../sheets/page/sheet-page.ts";
import { pagesToSvg } from "../sheets/pages-to-svg.ts";
import { pagesToPdf } from "../sheets/pdf/pages-to-pdf.ts";
import { fontFaceCss } from "../sheets/pdf/sheet-fonts.ts";
import { firingSheet } from "../studio/firing-sheet.ts";
import { foretell } from "../studio/foretell.ts";
import { type Command, type ExitCode, printJson, printLines } from "./command.ts";
import { readJsonFile, readPlanFile, readRequestFile, writeWholeFile } from "./files.ts";
import { choiceOption, unitsOption } from "./options.ts";

/** `wareboard sheet`: the pages to carry to the kiln. */
export const sheet: Command = {
  name: "sheet",
  words: ["REQUEST.json", "PLAN.json"],
  summary: "Draw the sheet to carry to the kiln: every level to scale, the loading order, the counts, the cautions.",
  options: {
    out: { type: "string" },
    paper: { type: "string" },
    units: { type: "string" },
    programme: { type: "string" },
  },
  optionHelp: {
    out: "the file to write, .pdf or .svg",
    paper: "a4 or letter (a4)",
    units: "metric or inches (metric)",
    programme: "a firing programme (programme/1): adds the pages that carry the firing",
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
    const units = unitsOption(call);
    const programme = call.options.programme;
    const firing =
      typeof programme === "string"
        ? firingOf(request, plan, readJsonFile(programme, readProgramme), paper, units)
        : [];
    const pages = loadSheetPages(request, plan, { paper, units, broken, firing });
    writeWholeFile(out, /\.pdf$/i.test(out) ? await pagesToPdf(pages) : pagesToSvg(pages, fontFaceCss()));
    if (call.json) printJson({ out, pages: pages.length, broken });
    else {
      printLines([`${out}: ${pages.length} pages.`, ...broken.map((each) => `  Careful: ${each.message}`)]);
    }
    return 0;
  },
};

/** The firing's pages for this load. A studio that reads inches reads Fahrenheit. */
function firingOf(
  request: LoadRequest,
  plan: LoadPlan,
  programme: Programme,
  paper: Paper,
  units: LengthUnits,
): PageContent[] {
  const degrees = units === "inches" ? "F" : "C";
  const foretold = foretell(request, plan, programme, { roomC: 20 });
  const sheetOfFiring = firingSheet(request, programme, foretold, { units: degrees, pricePerKWh: null });
  return firingPages(sheetOfFiring, { paper, units: degrees });
}
