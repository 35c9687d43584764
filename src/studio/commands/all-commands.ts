import type { StudioCommand } from "./command.ts";
import { KILN_COMMANDS } from "./kiln-commands.ts";
import { LOAD_COMMANDS } from "./load-commands.ts";
import { MATERIAL_COMMANDS } from "./material-commands.ts";
import { NOTE_AND_PHOTO_COMMANDS } from "./note-and-photo-commands.ts";
import { SETTINGS_COMMANDS } from "./settings-commands.ts";
import { WARE_COMMANDS } from "./ware-commands.ts";

/** Everything she can do to her studio, by name. */
export const ALL_COMMANDS: ReadonlyMap<string, StudioCommand> = new Map(
  [
    ...WARE_COMMANDS,
    ...KILN_COMMANDS,
    ...MATERIAL_COMMANDS,
    ...LOAD_COMMANDS,
    ...NOTE_AND_PHOTO_COMMANDS,
    ...SETTINGS_COMMANDS,
  ].map((each) => [each.name, each]),
);
