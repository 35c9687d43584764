import type { StudioCommand } from "./command.ts";
import { FIRING_COMMANDS } from "./firing-commands.ts";
import { FIRING_COURSE_COMMANDS } from "./firing-course-commands.ts";
import { judgePieces } from "./judge-pieces.ts";
import { KILN_COMMANDS } from "./kiln-commands.ts";
import { LEARN_COMMANDS } from "./learn-commands.ts";
import { LOAD_COMMANDS } from "./load-commands.ts";
import { MATERIAL_COMMANDS } from "./material-commands.ts";
import { NOTE_AND_PHOTO_COMMANDS } from "./note-and-photo-commands.ts";
import { NOTICE_COMMANDS } from "./notice-commands.ts";
import { PROGRAMME_COMMANDS } from "./programme-commands.ts";
import { SETTINGS_COMMANDS } from "./settings-commands.ts";
import { unpackLoad } from "./unpack-load.ts";
import { UPKEEP_COMMANDS } from "./upkeep-commands.ts";
import { WARE_COMMANDS } from "./ware-commands.ts";

/** Everything she can do to her studio, by name. */
export const ALL_COMMANDS: ReadonlyMap<string, StudioCommand> = new Map(
  [
    ...WARE_COMMANDS,
    ...KILN_COMMANDS,
    ...MATERIAL_COMMANDS,
    ...LOAD_COMMANDS,
    unpackLoad,
    ...FIRING_COMMANDS,
    ...FIRING_COURSE_COMMANDS,
    judgePieces,
    ...NOTICE_COMMANDS,
    ...PROGRAMME_COMMANDS,
    ...LEARN_COMMANDS,
    ...UPKEEP_COMMANDS,
    ...NOTE_AND_PHOTO_COMMANDS,
    ...SETTINGS_COMMANDS,
  ].map((each) => [each.name, each]),
);
