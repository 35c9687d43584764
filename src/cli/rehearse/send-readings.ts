import type { RehearsedFiring } from "../../firing/rehearsal/rehearsed-firing.ts";
import type { ReadingsKept } from "../../studio/api/readings-contract.ts";
import type { Begun } from "./begin-firing.ts";
import type { StudioTalk } from "./studio-talk.ts";

/** How often what has been read meanwhile is sent, milliseconds of the world's clock. */
const SEND_EVERY_MS = 250;
/** Cool enough to unload: the rehearsal is over. */
const COOL_C = 45;
/** So many at a time: the kiln catches up in parts where the machine was busy. */
const MOST_AT_ONCE = 2000;

export interface Sending {
  readonly firing: RehearsedFiring;
  readonly begun: Begun;
  readonly studio: StudioTalk;
  /** The rehearsal's clock, milliseconds. */
  readonly nowMs: () => number;
  /** Asked before each part: true ends it. */
  readonly isStopped: () => boolean;
  /** Told once, when the elements are off for good. */
  readonly onOff: (at: string) => Promise<void>;
}

/** Fires on as the clock goes and sends what the probe reads. @returns when the last was, and how many were sent */
export async function sendReadings(sending: Sending): Promise<{ readonly at: string; readonly sent: number }> {
  const { firing, begun, studio, nowMs } = sending;
  const startMs = Date.parse(begun.startedAt);
  let [atMs, sent, isOff, isCool] = [startMs, 0, false, false];
  while (!isCool && !sending.isStopped()) {
    const readings: { at: string; tempC: number }[] = [];
    while (atMs <= nowMs() - 30_000 && readings.length < MOST_AT_ONCE && !isCool) {
      const { minute, tempC, isOff: off } = firing.step();
      atMs = startMs + minute * 60_000;
      const at = new Date(atMs).toISOString();
      if (tempC !== null) readings.push({ at, tempC });
      if (off && !isOff) {
        isOff = true;
        await sending.onOff(at);
      }
      isCool = isOff && tempC !== null && tempC <= COOL_C;
    }
    if (readings.length > 0) {
      await studio.post<ReadingsKept>("readings", { readings }, begun.token);
      sent += readings.length;
    }
    if (!isCool) await new Promise((resolve) => setTimeout(resolve, SEND_EVERY_MS));
  }
  return { at: new Date(atMs).toISOString(), sent };
}
