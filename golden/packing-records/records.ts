import { readFileSync } from "node:fs";

interface Table<Row> {
  readonly values: Readonly<Record<string, Row>>;
}
interface Records {
  readonly equalCirclesInCircle: Table<{ readonly ratio: number }>;
  readonly equalCirclesInSquare: Table<{ readonly side: number }>;
  readonly unequal_NR: Table<{ readonly radii: readonly number[]; readonly R: number }>;
}

/** The published records, each with its source; see README.md. */
export const RECORDS = JSON.parse(readFileSync(new URL("./records.json", import.meta.url), "utf8")) as Records;

/** One problem of the tables: discs, the container, and its smallest size on record (radius, or half the side). */
export interface RecordCase {
  readonly name: string;
  readonly radii: readonly number[];
  readonly container: "circle" | "square";
  readonly record: number;
}

const alike = (count: number): number[] => new Array<number>(count).fill(1);

export const equalInCircle = (count: number): RecordCase => ({
  name: `${count} equal discs in a circle`,
  radii: alike(count),
  container: "circle",
  record: (RECORDS.equalCirclesInCircle.values[count] as { ratio: number }).ratio,
});

export const equalInSquare = (count: number): RecordCase => ({
  name: `${count} equal discs in a square`,
  radii: alike(count),
  container: "square",
  record: (RECORDS.equalCirclesInSquare.values[count] as { side: number }).side / 2,
});

export const unequalInCircle = (name: string): RecordCase => {
  const { radii, R } = RECORDS.unequal_NR.values[name] as { radii: readonly number[]; R: number };
  return { name: `${name}, unequal discs in a circle`, radii, container: "circle", record: R };
};
