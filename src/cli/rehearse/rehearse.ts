import { resolve } from "node:path";
import { REHEARSED_FAULTS, type RehearsedFault } from "../../firing/rehearsal/rehearsed-fault.ts";
import { RehearsedFiring } from "../../firing/rehearsal/rehearsed-firing.ts";
import { seededChance } from "../../measures/seeded-chance.ts";
import type { FiringRecord } from "../../studio/records/firing-record.ts";
import type { LoadRecord } from "../../studio/records/load-record.ts";
import { type Command, type ExitCode, printJson, printLines } from "../command.ts";
import { choiceOption, numberOption } from "../options.ts";
import { beginFiring, keepQuiet, rehearsalMinutes } from "./begin-firing.ts";
import { chooseFiring } from "./choose-firing.ts";
import { RehearsalClock } from "./rehearsal-clock.ts";
import { sendReadings } from "./send-readings.ts";
import { studioTalk } from "./studio-talk.ts";

const USUAL_PORT = 7421;
const USUAL_SPEED = 300;
const LONGEST_MS = 4 * 24 * 60 * 60_000;

/** `wareboard rehearse`: an invented kiln fires, sped up, and is watched as a real one is. */
export const rehearse: Command = {
  name: "rehearse",
  words: [],
  summary: "Watch a simulated firing, sped up: the demo's, or your own next one in a copy of your studio.",
  options: {
    data: { type: "string" },
    speed: { type: "string" },
    fault: { type: "string" },
    seed: { type: "string" },
    port: { type: "string" },
    once: { type: "boolean" },
    "no-open": { type: "boolean" },
  },
  optionHelp: {
    data: "the folder of your own studio; it is copied and stays as it is (the demo's studio)",
    speed: `how many times as fast as the world, 1 to 3600 (${USUAL_SPEED}: a day in five minutes)`,
    fault: `what goes wrong: ${REHEARSED_FAULTS.join(", ")} (nothing)`,
    seed: "another number is another kiln (1)",
    port: `where to listen (${USUAL_PORT})`,
    once: "shut off, open and stop by itself once the kiln is cool",
    "no-open": "do not open the browser",
  },
  examples: ["wareboard rehearse", "wareboard rehearse --speed 600 --fault stall", "wareboard rehearse --data ~/pots"],
  run: async (call): Promise<ExitCode> => {
    process.umask(0o077);
    const speed = numberOption(call, "speed", { least: 1, most: 3600, otherwise: USUAL_SPEED });
    const seed = numberOption(call, "seed", { least: 0, most: 2 ** 31 - 1, whole: true, otherwise: 1 });
    const port = numberOption(call, "port", { least: 0, most: 65535, whole: true, otherwise: USUAL_PORT });
    const fault = choiceOption<RehearsedFault | "none">(call, "fault", REHEARSED_FAULTS, "none");
    const once = call.options.once === true;
    const own = typeof call.options.data === "string" ? resolve(call.options.data) : null;
    const { runServer } = await import("../../server/running/run-server.ts");
    const { canOpenBrowser, openBrowser } = await import("../../server/running/open-browser.ts");
    const { rehearsalFolder } = await import("./studio-copy.ts");
    const { folder, isCopy, remove } = await rehearsalFolder(own);
    // Until it is known how long the firing takes, the clock stands before any moment at which it may begin.
    const beforeMs = Date.now() - LONGEST_MS;
    let nowMs = (): number => beforeMs;
    let isStopped = false;
    const stopped = new Promise<void>((asked) => {
      for (const signal of ["SIGINT", "SIGTERM", "SIGHUP"] as const) {
        process.once(signal, () => {
          isStopped = true;
          asked();
        });
      }
    });
    const running = await runServer({
      ...{ port, dataFolder: folder, storePlace: null, homeNetwork: false, passphrase: null, certificate: null },
      now: () => new Date(nowMs()).toISOString(),
      pace: speed,
      say: (words) => process.stderr.write(`  ${words}\n`),
      complain: (error) => process.stderr.write(`${error.stack ?? error.message}\n`),
    }).catch((error: unknown) => {
      remove();
      throw error;
    });
    try {
      const studio = studioTalk(running.address);
      if (!isCopy) await studio.post("begin", { with: "demo" });
      await keepQuiet(studio);
      const chosen = chooseFiring(await studio.get<FiringRecord[]>("firings"), await studio.get<LoadRecord[]>("loads"));
      const minutes = rehearsalMinutes(chosen);
      const clock = new RehearsalClock(speed, minutes * 60_000, () => Date.now());
      nowMs = () => clock.nowMs();
      const begun = await beginFiring(studio, chosen, new Date(nowMs()).toISOString());
      const address = `${running.address}/firings/${begun.id}/watch`;
      if (call.json) printJson({ address, firingId: begun.id, startedAt: begun.startedAt, speed });
      else printLines(welcome(address, speed, minutes, isCopy));
      if (call.options["no-open"] !== true && canOpenBrowser(process.env, process.platform)) openBrowser(address);
      const { at, sent } = await sendReadings({
        firing: new RehearsedFiring(chosen.input, seededChance(seed), fault === "none" ? null : fault),
        ...{ begun, studio, clock, isStopped: () => isStopped },
        onOff: async (offAt) => {
          if (once) await studio.command("shut-off", { id: begun.id, at: offAt });
        },
      });
      if (once && !isStopped) {
        await studio.command("end-firing", { id: begun.id, at });
        const firing = await studio.get<FiringRecord>(`firings/${begun.id}`);
        if (call.json) printJson({ sent, firing });
      } else if (!isStopped) {
        if (!call.json) printLines(["", "  It is cool. Look around as long as you like; Ctrl-C ends the rehearsal."]);
        await stopped;
      }
      if (!call.json) printLines(["", "  The rehearsal is over; nothing of it is kept."]);
      return 0;
    } finally {
      await running.stop();
      remove();
    }
  },
};

function welcome(address: string, speed: number, minutes: number, isCopy: boolean): string[] {
  const takes = Math.max(1, Math.round(minutes / speed));
  return [
    "",
    `  An invented kiln fires ${isCopy ? "your next load, in a copy of your studio" : "the demo's load"}.`,
    `  Its clock runs ${speed} times as fast: about ${takes} min from the switch to cool ware.`,
    "",
    `  Watch it at ${address}`,
    "",
    "  No real kiln has to do with it. Ctrl-C ends it, and nothing of it is kept.",
  ];
}
