import { check } from "./check.ts";
import type { Command } from "./command.ts";
import { demo } from "./demo.ts";
import { firings } from "./firing-list.ts";
import { watch } from "./firing-watch.ts";
import { heatwork } from "./heatwork.ts";
import { learn } from "./learn.ts";
import { plan } from "./plan.ts";
import { predict } from "./predict.ts";
import { programme } from "./programme.ts";
import { rehearse } from "./rehearse/rehearse.ts";
import { serve } from "./serve.ts";
import { sheet } from "./sheet.ts";
import { calendar } from "./studio-calendar.ts";
import { causes } from "./studio-causes.ts";
import { costs } from "./studio-costs.ts";
import { doInStudio } from "./studio-do.ts";
import { upkeep } from "./studio-upkeep.ts";

/** Every command, in the order of the job. Help, parsing and tests read this list. */
export const COMMANDS: readonly Command[] = [
  serve,
  demo,
  plan,
  check,
  sheet,
  programme,
  predict,
  heatwork,
  watch,
  learn,
  doInStudio,
  firings,
  calendar,
  causes,
  costs,
  upkeep,
  rehearse,
];
