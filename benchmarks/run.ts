// Prints the planner's table against both yardsticks and the bound, and stores it with date and machine: see README.md.
// Run: npm run bench, or node benchmarks/run.ts [loads|live|drags|rules|records|browser …] [--seeds N] [--pieces N,N] [--seconds S]
//      [--threads N] [--random N] [--dry]

import { parseArgs } from "node:util";
import { inBrowser } from "./browser.ts";
import { type Drags, dragRows, drags } from "./drags.ts";
import { type LivePlan, livePlan, livePlanRows } from "./live-plans.ts";
import { packingRecords } from "./packing-records.ts";
import { randomRules, randomRulesRows } from "./random-rules.ts";
import { recordRows } from "./record-rows.ts";
import { machine, store } from "./results.ts";
import { type Row, tableLines } from "./row.ts";
import { type SingleLoad, singleLoad, singleLoadRows } from "./single-loads.ts";

const { values, positionals } = parseArgs({
  allowPositionals: true,
  options: {
    seeds: { type: "string", default: "10" },
    pieces: { type: "string", default: "40,200" },
    seconds: { type: "string", default: "2" },
    threads: { type: "string", default: "0" },
    random: { type: "string", default: "300" },
    dry: { type: "boolean", default: false },
  },
});
const seeds = Number(values.seeds);

const parts: Record<string, () => Promise<{ rows: Row[]; result: unknown }>> = {
  loads: async () => {
    const options = { seeds, seconds: Number(values.seconds), threads: Number(values.threads) };
    const loads: SingleLoad[] = [];
    for (const pieces of values.pieces.split(",").map(Number)) {
      for (let seed = 1; seed <= seeds; seed++) loads.push(await singleLoad(seed, pieces, options));
    }
    return { rows: singleLoadRows(loads), result: { options, loads } };
  },
  live: async () => {
    const plans: LivePlan[] = [];
    for (const pieces of values.pieces.split(",").map(Number)) {
      for (let seed = 1; seed <= seeds; seed++) {
        const plan = await livePlan(seed, pieces, Number(values.seconds));
        if (plan) plans.push(plan);
      }
    }
    return { rows: livePlanRows(plans), result: { seeds, seconds: Number(values.seconds), plans } };
  },
  drags: async () => {
    const loads: Drags[] = [];
    for (const pieces of values.pieces.split(",").map(Number)) {
      for (let seed = 1; seed <= seeds; seed++) {
        const load = drags(seed, pieces);
        if (load) loads.push(load);
      }
    }
    const times = loads.map(({ pieces, answer }) => ({ pieces, p95Ms: answer[Math.floor(answer.length * 0.95)] }));
    return { rows: dragRows(loads), result: { seeds, times } };
  },
  rules: async () => {
    const result = randomRules(Number(values.random));
    return { rows: randomRulesRows(result), result };
  },
  records: async () => {
    const result = packingRecords(seeds);
    return { rows: recordRows(result), result: { seeds, result } };
  },
  browser: inBrowser,
};
const NOT_YET: Row[] = [
  {
    what: "loads for a backlog of 200 and of 1000",
    target: "≤ 11 in 20 s, ≤ 51 in 60 s",
    found: "not there yet",
    met: null,
  },
];

const unknown = positionals.filter((part) => !(part in parts));
if (unknown.length > 0) {
  console.error(`There is no part "${unknown[0]}"; there are ${Object.keys(parts).join(", ")}.`);
  process.exit(2);
}
console.log(`${machine()}\n`);
for (const part of positionals.length > 0 ? positionals : Object.keys(parts)) {
  console.log(part);
  const { rows, result } = await parts[part]!();
  for (const line of tableLines(rows)) console.log(line);
  if (!values.dry) console.log(`  stored in ${store(part, { rows, ...(result as object) })}`);
  console.log("");
}
if (positionals.length === 0) for (const line of tableLines(NOT_YET)) console.log(line);
