import {
  equalInCircle,
  equalInSquare,
  RECORDS,
  type RecordCase,
  unequalInCircle,
} from "../golden/packing-records/records.ts";
import { smallestContainer } from "../golden/packing-records/smallest-container.ts";

/** One problem over all seeds. Times are CPU milliseconds until the record was met to `within`; a miss counts as the limit. */
export interface PackingRecordRow {
  readonly name: string;
  readonly within: number;
  readonly medianMs: number;
  readonly worstMs: number;
  readonly missed: number;
  readonly seeds: number;
  readonly worstExcess: number;
}

const cpuMs = (): number => {
  const { user, system } = process.cpuUsage();
  return (user + system) / 1000;
};

function run(problem: RecordCase, within: number, limitMs: number, seeds: number): PackingRecordRow {
  const times: number[] = [];
  let missed = 0;
  let worstExcess = 0;
  for (let seed = 1; seed <= seeds; seed++) {
    const began = cpuMs();
    let over = false;
    const found = smallestContainer(problem.radii, problem.container, seed, (best) => {
      over ||= best <= problem.record * (1 + within) || cpuMs() - began > limitMs;
      return !over;
    });
    const excess = found.size / problem.record - 1;
    if (excess > within) missed++;
    times.push(excess > within ? limitMs : cpuMs() - began);
    worstExcess = Math.max(worstExcess, excess);
  }
  times.sort((a, b) => a - b);
  return {
    name: problem.name,
    within,
    medianMs: times[times.length >> 1] as number,
    worstMs: times.at(-1) as number,
    missed,
    seeds,
    worstExcess,
  };
}

/** Every problem of the tables that the planner's targets name; `onRow` hears of each as it is done. */
export function packingRecords(seeds = 10, onRow: (row: PackingRecordRow) => void = () => {}): PackingRecordRow[] {
  const upTo = (most: number, values: object): number[] =>
    Object.keys(values)
      .map(Number)
      .filter((count) => count <= most);
  const problems: readonly (readonly [RecordCase, number, number])[] = [
    ...upTo(61, RECORDS.equalCirclesInCircle.values).map((count) => [equalInCircle(count), 1e-3, 5000] as const),
    ...upTo(30, RECORDS.equalCirclesInSquare.values).map((count) => [equalInSquare(count), 1e-3, 5000] as const),
    ...Object.keys(RECORDS.unequal_NR.values).map((name) => [unequalInCircle(name), 1e-2, 10_000] as const),
  ];
  return problems.map(([problem, within, limitMs]) => {
    const row = run(problem, within, limitMs, seeds);
    onRow(row);
    return row;
  });
}

if (import.meta.main) {
  const seeds = Number(process.argv[2] ?? 10);
  console.log(`Packing records, ${seeds} seeds each, CPU time until within the given share of the record:`);
  packingRecords(seeds, (row) => {
    console.log(
      `${row.name.padEnd(40)} within ${(row.within * 100).toFixed(1)} %  median ${row.medianMs.toFixed(0).padStart(6)} ms  worst ${row.worstMs.toFixed(0).padStart(6)} ms  missed ${row.missed}/${row.seeds}  worst +${(row.worstExcess * 100).toFixed(3)} %`,
    );
  });
}
