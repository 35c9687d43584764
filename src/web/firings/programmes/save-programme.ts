import type { Programme } from "../../../firing/programme/programme.ts";
import { saveFile } from "../save-file.ts";

/** Gives a programme out as a file of programme/1. */
export function saveProgramme(programme: Programme): void {
  const name = programme.name.replace(/[^\p{Letter}\p{Number}]+/gu, "-").replace(/^-|-$/g, "") || "programme";
  saveFile(`${name}.json`, "application/json", `${JSON.stringify(programme, null, 2)}\n`);
}
