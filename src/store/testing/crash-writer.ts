import { writeSync } from "node:fs";
import { openSqliteStore } from "../sqlite-store.ts";
import { note, plainWare } from "./sample-records.ts";

// Run by crash.test.ts, and killed by it. Writes two records a transaction, for ever or so often, and says each number once it is
// acknowledged. Each change also goes over a row that is there already, so that old pages are rewritten too.
const [file = "", name = "", from = "0", times = "Infinity"] = process.argv.slice(2);
const store = await openSqliteStore(file);
for (let n = Number(from); n < Number(from) + Number(times); n++) {
  const id = `${name}-${n}`;
  await store.write(async (records) => {
    await records.ware.add(plainWare(id, { ownerNote: "x".repeat((n * 977) % 2000) }));
    await records.notes.add(note(id, { text: `beside ${id}` }));
    const shared = await records.notes.get(`${name}-latest`);
    const latest = note(`${name}-latest`, { text: String(n) });
    await (shared ? records.notes.change(latest) : records.notes.add(latest));
  });
  writeSync(1, `${n}\n`);
}
await store.close();
