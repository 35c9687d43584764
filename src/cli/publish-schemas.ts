import { mkdirSync, writeFileSync } from "node:fs";
import { publishedSchemas } from "./published-schemas.ts";

// Writes docs/schemas from the code's own types. `npm run schemas`; a test refuses to pass where they differ.
const folder = new URL("../../docs/schemas/", import.meta.url);
mkdirSync(folder, { recursive: true });
for (const [name, schema] of Object.entries(publishedSchemas())) {
  writeFileSync(new URL(name, folder), `${JSON.stringify(schema, null, 2)}\n`);
}
