import { checkPlan } from "../loading/checker/check-plan.ts";
import { type Command, printJson, printLines } from "./command.ts";
import { readPlanFile, readRequestFile } from "./files.ts";

/** `wareboard check`: every rule broken. */
export const check: Command = {
  name: "check",
  words: ["REQUEST.json", "PLAN.json"],
  summary: "Check a load against the rules: every rule broken, with the pieces and the distance found.",
  options: {},
  optionHelp: {},
  examples: [
    "wareboard check examples/first-load/request.json plan.json",
    "wareboard check request.json plan.json --json",
  ],
  run: (call) => {
    const request = readRequestFile(call.words[0] as string);
    const plan = readPlanFile(call.words[1] as string, request);
    const broken = checkPlan(request, plan);
    if (call.json) printJson({ fits: broken.length === 0, broken });
    else if (broken.length === 0) printLines(["Every rule is kept."]);
    else {
      const sentences = broken.map((each) => `  ${each.message}`);
      printLines([`${broken.length} ${broken.length === 1 ? "rule is" : "rules are"} broken:`, ...sentences]);
    }
    return broken.length === 0 ? 0 : 1;
  },
};
