import { createHash } from "node:crypto";
import {
  type Dialect,
  DummyDriver,
  Kysely,
  PostgresAdapter,
  PostgresIntrospector,
  PostgresQueryCompiler,
  SqliteAdapter,
  SqliteIntrospector,
  SqliteQueryCompiler,
} from "kysely";
import type { Engine } from "../database.ts";
import { MIGRATIONS } from "../migrations/all-migrations.ts";
import { POSTGRES } from "../postgres-store.ts";
import { SQLITE } from "../sqlite-store.ts";

const unconnected: Readonly<Record<Engine["name"], Dialect>> = {
  sqlite: {
    createAdapter: () => new SqliteAdapter(),
    createDriver: () => new DummyDriver(),
    createIntrospector: (database) => new SqliteIntrospector(database),
    createQueryCompiler: () => new SqliteQueryCompiler(),
  },
  postgres: {
    createAdapter: () => new PostgresAdapter(),
    createDriver: () => new DummyDriver(),
    createIntrospector: (database) => new PostgresIntrospector(database),
    createQueryCompiler: () => new PostgresQueryCompiler(),
  },
};

export const ENGINES = [SQLITE, POSTGRES] as const;

/** Every statement of every migration, as the database is given it, by the migration's name. */
export function compiledMigrations(engine: Engine): Map<string, string[]> {
  const { schema } = new Kysely({ dialect: unconnected[engine.name] });
  return new Map(
    MIGRATIONS.map(({ name, steps }) => [name, steps(schema, engine).map((step) => step.compile().sql)] as const),
  );
}

/** The schema as it is read by people: what `schema.sqlite.sql` and `schema.postgres.sql` hold. */
export function schemaText(engine: Engine): string {
  const parts = [...compiledMigrations(engine)].map(([name, statements]) => {
    const lines = statements.map(
      (statement) =>
        `${statement.replaceAll(/, (?=constraint|"\w+" (text|integer|real|blob|bytea|double))/g, ",\n  ")};\n`,
    );
    return `-- ${name}\n${lines.join("")}`;
  });
  return parts.join("\n");
}

/** One line a migration, with a fingerprint of what it says to each database: what `history.txt` holds. */
export function historyText(): string {
  const compiled = ENGINES.map((engine) => compiledMigrations(engine));
  return MIGRATIONS.map(({ name }) => {
    const said = compiled.map((each) => (each.get(name) ?? []).join(";\n")).join("\n--\n");
    return `${name} ${createHash("sha256").update(said).digest("hex")}\n`;
  }).join("");
}
