import { existsSync, readFileSync, writeFileSync } from "node:fs";
import { ENGINES, historyText, schemaText } from "./compiled-migrations.ts";

// After adding a migration: `node src/store/testing/write-history.ts` writes down what it is. It never rewrites what was
// written down before.
const folder = new URL("../migrations/", import.meta.url);
const history = new URL("history.txt", folder);
const before = existsSync(history) ? readFileSync(history, "utf8") : "";
if (!historyText().startsWith(before)) {
  throw new Error("A migration that was let out has changed. Put it back as it was and add another after it.");
}
writeFileSync(history, historyText());
for (const engine of ENGINES) writeFileSync(new URL(`schema.${engine.name}.sql`, folder), schemaText(engine));
