import { planOnWorkers } from "../workers/plan-on-workers.ts";
import { type Command, printJson, printLines } from "./command.ts";
import { readPlanFile, readRequestFile, writeWholeFile } from "./files.ts";
import { numberOption, unitsOption } from "./options.ts";
import { planText } from "./plan-text.ts";
import { terminalProgress } from "./progress.ts";

/** `wareboard plan`: arrange a load. */
export const plan: Command = {
  name: "plan",
  words: ["REQUEST.json"],
  summary: "Arrange a load: which pots go in, on which shelves, on which posts, where each stands.",
  options: {
    out: { type: "string" },
    seconds: { type: "string" },
    seed: { type: "string" },
    around: { type: "string" },
    units: { type: "string" },
  },
  optionHelp: {
    out: "write the plan (load-plan/1) to this file",
    seconds: "how long to look, at most (2)",
    seed: "the same seed tries the same things (1)",
    around: "a plan (load-plan/1) in which all stays where it is; what else waits is packed beside it",
    units: "metric or inches, for what is printed",
  },
  examples: [
    "wareboard plan examples/first-load/request.json --out plan.json",
    "wareboard plan request.json --seconds 10 --seed 7 --json",
    "wareboard plan request.json --around plan.json --out fuller.json",
  ],
  run: async (call) => {
    const path = call.words[0] as string;
    const request = readRequestFile(path);
    const seconds = numberOption(call, "seconds", { least: 0.05, most: 3600, otherwise: 2 });
    const seed = numberOption(call, "seed", { least: 0, most: 2 ** 31 - 1, whole: true, otherwise: 1 });
    const units = unitsOption(call);
    const given = call.options.around;
    const around =
      typeof given === "string" ? ({ plan: readPlanFile(given, request), keep: "all", pins: [] } as const) : null;
    const progress = terminalProgress(call.json);
    const outcome = await planOnWorkers(request, {
      seed,
      seconds,
      onProgress: progress.show,
      ...(around ? { around } : {}),
    }).finally(progress.clear);
    if (outcome.kind === "impossible") {
      if (call.json) printJson({ impossible: outcome.reasons });
      else printLines(["No load can be made of this:", ...outcome.reasons.map((reason) => `  ${reason.message}`)]);
      return 1;
    }
    const out = call.options.out;
    if (typeof out === "string") writeWholeFile(out, `${JSON.stringify(outcome.plan, null, 1)}\n`);
    if (call.json) printJson(outcome.plan);
    else printLines(planText(request, outcome.plan, units));
    const mustFire = new Set(request.ware.filter((ware) => ware.mustFire).map((ware) => ware.name));
    return outcome.plan.left.some((left) => mustFire.has(left.ware)) ? 1 : 0;
  },
};
