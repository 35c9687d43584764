import { studio } from "./0001-studio.ts";
import { historyAndSettings } from "./0002-history-and-settings.ts";
import { aroundTheFiring } from "./0003-around-the-firing.ts";
import { rollUps } from "./0004-roll-ups.ts";
import { judgementsTakenBack } from "./0005-judgements-taken-back.ts";
import type { Migration } from "./migration.ts";

/** The store's history, oldest first. Only ever longer: `history.txt` beside this file holds each to what it was. */
export const MIGRATIONS: readonly Migration[] = [
  studio,
  historyAndSettings,
  aroundTheFiring,
  rollUps,
  judgementsTakenBack,
];
