import { RehearsedFiring } from "../../firing/rehearsal/rehearsed-firing.ts";
import type { ReadingsKept } from "../../studio/api/readings-contract.ts";
import type { Begun } from "./begin-firing.ts";
import type { RehearsalClock } from "./rehearsal-clock.ts";
import type { StudioTalk } from "./studio-talk.ts";

/** How often it is looked whether it is time for the next readings, milliseconds of the world's clock. */
const LOOK_EVERY_MS = 100;
/** Cool enough to unload: the rehearsal is over. */
const COOL_C = 45;
/** What is sent at a time, and how far the clock may run ahead of it: by the kiln's own minutes, far from a silence. */
const AT_A_TIME_MS = 2 * 60_000;

export interface Sending {
  readonly firing: RehearsedFiring;
  readonly begun: Begun;
  readonly studio: StudioTalk;
  readonly clock: RehearsalClock;
  /** Asked before each part: true ends it. */
  readonly isStopped: () => boolean;
  /** Told once, when the elements are off for good. */
  readonly onOff: (at: string) => Promise<void>;
}

/** Fires on as the clock goes and sends what the probe reads. @returns when the last was, and how many were sent */
export async function sendReadings(sending: Sending): Promise<{ readonly at: string; readonly sent: number }> {
  const { firing, begun, studio, clock } = sending;
  const startMs = Date.parse(begun.startedAt);
  let [atMs, sent, isOff, isCool] = [startMs, 0, false, false];
  clock.mayGoTo(startMs + AT_A_TIME_MS);
  while (!isCool && !sending.isStopped()) {
    const readings: { at: string; tempC: number }[] = [];
    const untilMs = Math.min(clock.wantedMs(), atMs + AT_A_TIME_MS);
    while (atMs + RehearsedFiring.STEP_MS <= untilMs && !isCool) {
      const { minute, tempC, isOff: off } = firing.step();
      atMs = startMs + minute * 60_000;
      const at = new Date(atMs).toISOString();
      if (tempC !== null) readings.push({ at, tempC });
      isCool = off && tempC !== null && tempC <= COOL_C;
      if (!off || isOff) continue;
      isOff = true;
      clock.mayGoTo(atMs);
      await sending.onOff(at);
    }
    clock.mayGoTo(atMs);
    if (readings.length > 0) await studio.post<ReadingsKept>("readings", { readings }, begun.token);
    sent += readings.length;
    clock.mayGoTo(atMs + AT_A_TIME_MS);
    if (atMs + AT_A_TIME_MS > clock.wantedMs()) await new Promise((resolve) => setTimeout(resolve, LOOK_EVERY_MS));
  }
  clock.letGo();
  return { at: new Date(atMs).toISOString(), sent };
}
