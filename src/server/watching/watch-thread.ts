import { parentPort } from "node:worker_threads";
import { type FiringWatch, watchFiring } from "../../firing/watching/watch-firing.ts";
import type { WatchLook, WatchTask } from "./watch-messages.ts";

// A thread of its own: an outlook takes some tens of milliseconds, and after a restart a day's readings are read again.

const watches = new Map<string, FiringWatch>();
const failures = new Map<string, string>();

parentPort?.on("message", (task: WatchTask) => {
  if (task.kind === "look") {
    parentPort?.postMessage(look(task));
    return;
  }
  try {
    take(task);
  } catch (error) {
    watches.delete(task.id);
    failures.set(task.id, error instanceof Error ? error.message : String(error));
  }
});

function take(task: Exclude<WatchTask, { kind: "look" }>): void {
  if (task.kind === "begin") {
    const { watched, programme, cone } = task.firing;
    failures.delete(task.id);
    watches.set(task.id, watchFiring(watched, programme, { startMin: 0, cone }));
    return;
  }
  const watch = watches.get(task.id);
  if (task.kind === "end") {
    watches.delete(task.id);
    failures.delete(task.id);
  } else if (task.kind === "shut off") watch?.shutOff(task.minute);
  else for (let i = 0; i < task.minutes.length; i++) watch?.read(task.minutes[i] as number, task.tempC[i] as number);
}

function look({ id, ask, nowMin }: Extract<WatchTask, { kind: "look" }>): WatchLook {
  const watch = watches.get(id);
  if (watch === undefined) return { ask, state: null, failed: failures.get(id) ?? null };
  try {
    watch.silence(nowMin);
    return { ask, state: watch.state(), failed: null };
  } catch (error) {
    return { ask, state: null, failed: error instanceof Error ? error.message : String(error) };
  }
}
