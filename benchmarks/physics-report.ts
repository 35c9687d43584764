// Writes docs/physics.md: the words of physics-prose.ts and what the checks find today.
// Run: node benchmarks/physics-report.ts

import { writeFileSync } from "node:fs";
import { join } from "node:path";
import { calibrationReport } from "./physics-calibration.ts";
import { heatWorkReport, type PhysicsCheck } from "./physics-heat-work.ts";
import { PHYSICS_PROSE } from "./physics-prose.ts";
import { thermalReport } from "./physics-thermal.ts";

const table = (checks: readonly PhysicsCheck[]): string =>
  [
    "| check | target | found | |",
    "|---|---|---|---|",
    ...checks.map(
      ({ check, target, found, met }) =>
        // No target set: nothing to meet.
        `| ${check} | ${target} | ${found} | ${target.startsWith("none set") ? "" : met ? "met" : "**missed**"} |`,
    ),
  ].join("\n");

/** The report, in Markdown. */
export function physicsReport(): string {
  const { opening, heatWork, heat, calibration, limits } = PHYSICS_PROSE;
  const sections = [
    { words: heatWork, checks: heatWorkReport() },
    { words: heat, checks: thermalReport() },
    { words: calibration, checks: calibrationReport() },
  ];
  const missed = sections.flatMap(({ checks }) => checks.filter((check) => !check.met));
  const summary =
    missed.length === 0
      ? "Every target is met."
      : `Missed: ${missed.map(({ check, target, found }) => `${check} (${found}; target ${target})`).join("; ")}.`;
  const parts = [opening, summary, ...sections.flatMap(({ words, checks }) => [words, table(checks)]), limits];
  return `${parts.join("\n\n")}\n`;
}

if (process.argv[1] === import.meta.filename) {
  writeFileSync(join(import.meta.dirname, "../docs/physics.md"), physicsReport());
}
