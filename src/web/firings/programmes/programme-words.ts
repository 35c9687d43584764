import type { Programme } from "../../../firing/programme/programme.ts";
import { FIRING_WORDS } from "../../waiting/words/ware-words.ts";

/** "cone 6 glaze, medium · Glaze, cone 6": its name, and what it is for where the name does not say so. */
export function programmeWords({ name, kind, cone }: Pick<Programme, "name" | "kind" | "cone">): string {
  const purpose = [kind === undefined ? "" : FIRING_WORDS[kind], cone === undefined ? "" : `cone ${cone}`].filter(
    Boolean,
  );
  const said = purpose.every((word) => name.toLowerCase().includes(word.toLowerCase()));
  return said || purpose.length === 0 ? name : `${name} (${purpose.join(", ").toLowerCase()})`;
}
