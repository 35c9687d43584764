import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { readCalibration } from "../firing/calibration/calibration-file.ts";
import { AT_REST, withValues } from "../firing/calibration/parameters.ts";
import { type Prediction, predict } from "../firing/prediction/predict.ts";
import { readProgramme } from "../firing/programme/programme.ts";
import { readLoadPlan } from "../loading/read-load-plan.ts";
import { readLoadRequest } from "../loading/read-load-request.ts";
import { seededChance } from "../measures/seeded-chance.ts";
import { storeFile } from "../server/running/data-folder.ts";
import { openSqliteStore } from "../store/sqlite-store.ts";
import { beginWithDemo } from "../studio/demo/begin.ts";
import { plannedFiring } from "../studio/planned-firing.ts";
import { loggedReadings, seenCones } from "../studio/year/true-firing.ts";
import { runCommand } from "./testing/run-command.ts";

const EXAMPLE = new URL("../../examples/first-load/request.json", import.meta.url);
const folder = mkdtempSync(join(tmpdir(), "wareboard-learn-"));
const file = (name: string): string => join(folder, name);
const json = (path: string) => JSON.parse(readFileSync(path, "utf8"));
const programme = {
  ...{ format: "programme/1", name: "to six", cone: "6", kind: "glaze" },
  segments: [
    { rateCPerHour: 150, targetC: 1100, holdMin: 0 },
    { rateCPerHour: 60, targetC: 1210, holdMin: 10 },
  ],
};
/** What nobody knows of the kiln. */
const TRUTH = { ...AT_REST, wallFactor: 1.15, powerFactor: 1.12, leakFactor: 1.3, probeOffsetC: 3, tilt: 0.05 };
let went: Prediction;
let cones: string;
const files = [file("request.json"), file("plan.json"), file("programme.json")];

/** The log as a logger wrote it, a reading a minute. */
function writeLog(name: string, keep: (minute: number) => boolean = () => true): string {
  const began = "2026-11-25T12:00:00.000Z";
  const rows = loggedReadings(went, began, seededChance(3)).flatMap(({ at, tempC }) => {
    const minute = (Date.parse(at) - Date.parse(began)) / 60_000;
    return keep(minute) ? [`${minute},${tempC}`] : [];
  });
  writeFileSync(file(name), `elapsedMin,tempC\n${rows.join("\n")}\n`);
  return file(name);
}

beforeAll(async () => {
  writeFileSync(file("request.json"), readFileSync(EXAMPLE));
  writeFileSync(file("programme.json"), JSON.stringify(programme));
  expect(runCommand(["plan", file("request.json"), "--out", file("plan.json"), "--seconds", "1"]).code).toBe(0);
  const request = readLoadRequest(json(file("request.json")));
  const { setting } = plannedFiring(request, readLoadPlan(json(file("plan.json")), request), "glaze", 20);
  went = predict({
    ...{ ...setting, ...withValues(setting.kiln, setting.load, TRUTH) },
    programme: readProgramme(programme),
  });
  cones = seenCones(went, "6", seededChance(1))
    .map(({ level, cone, bendDeg }) => `${level + 1}:${cone}:${bendDeg}`)
    .join(",");
  const store = await openSqliteStore(storeFile(folder));
  let ids = 0;
  await beginWithDemo(store, "2026-11-25T12:00:00.000Z", () => `id-${++ids}`);
  await store.close();
});
afterAll(() => rmSync(folder, { recursive: true }));

const learnArgs = (...more: string[]): string[] => ["learn", ...files, writeLog("log.csv"), ...more];

describe("learn, from files", () => {
  test("writes what one firing taught, and the next is foretold nearer the truth with it", () => {
    const out = file("calibration.json");
    const learned = runCommand(learnArgs("--kwh", went.kWh.toFixed(1), "--cones", cones, "--out", out, "--json"));
    expect(learned.err).toBe("");
    expect(learned.code).toBe(0);
    const value = JSON.parse(learned.out);
    expect(value.calibration).toEqual(json(out));
    expect(value.misfits.map(({ kind }: { kind: string }) => kind)).toEqual(expect.arrayContaining(["cones", "meter"]));
    expect(value.notes.length).toBeGreaterThan(2);
    // Each within three of the standard deviations it is told with.
    const { powerFactor, probeOffsetC } = readCalibration(json(out));
    expect(Math.abs(Math.log(powerFactor.value / TRUTH.powerFactor))).toBeLessThan(3 * powerFactor.sigma);
    expect(Math.abs(probeOffsetC.value - TRUTH.probeOffsetC)).toBeLessThan(3 * probeOffsetC.sigma);
    const foretold = (...more: string[]) => JSON.parse(runCommand(["predict", ...files, ...more, "--json"]).out);
    const [plain, calibrated] = [foretold(), foretold("--calibration", out)];
    const off = (kWh: number): number => Math.abs(kWh - went.kWh) / went.kWh;
    expect(off(calibrated.kWh)).toBeLessThan(off(plain.kWh) / 2);
    expect(off(calibrated.kWh)).toBeLessThan(0.05);
  });

  test("says in words what it learned, and refuses what it cannot use", () => {
    const told = runCommand(learnArgs("--kwh", went.kWh.toFixed(1)));
    expect(told.out).toContain("The next firing is foretold to ±");
    const refused = (...more: string[]) => {
      const { code, err } = runCommand(learnArgs(...more, "--json"));
      return { code, ...JSON.parse(err).error };
    };
    expect(refused("--cones", "9:6:45")).toMatchObject({ code: "wrong-option", path: "--cones" });
    expect(refused("--cones", "1:6")).toMatchObject({ code: "wrong-option", path: "--cones", found: '"1:6"' });
    expect(refused("--kiln", "back room")).toMatchObject({ code: "wrong-option", path: "--kiln" });
    expect(refused("--calibration", file("plan.json")).code).not.toBe(0);
    const { code, err } = runCommand(["learn", file("request.json"), "--json"]);
    expect([code, JSON.parse(err).error.code]).toEqual([2, "wrong-words"]);
  });
});

describe("watch", () => {
  const options = [
    "--request",
    file("request.json"),
    "--plan",
    file("plan.json"),
    "--programme",
    file("programme.json"),
  ];

  test("finds nothing wrong in a quiet log, and tells how it was to go on", () => {
    const quiet = runCommand(["watch", writeLog("quiet.csv"), ...options, "--every", "120", "--json"]);
    expect(quiet.code).toBe(0);
    const { faults, looks } = JSON.parse(quiet.out);
    expect(faults).toEqual([]);
    expect(looks.slice(0, 3).map(({ minute }: { minute: number }) => minute)).toEqual([120, 240, 360]);
    const { ends } = looks[2].outlook;
    expect(Math.abs(ends.atMin - went.firing.shutOffMin)).toBeLessThan(3 * ends.spreadMin);
  });

  test("tells when it would have noticed that readings stayed away, in words and with exit code 1", () => {
    const gap = writeLog("gap.csv", (minute) => minute < 300 || minute > 330);
    const told = runCommand(["watch", gap, ...options]);
    expect(told.code).toBe(1);
    expect(told.out).toMatch(/^5 h 0\d min {2}silence: /);
    expect(told.out).toContain("never switches a kiln");
    const { faults } = JSON.parse(runCommand(["watch", gap, ...options, "--json"]).out);
    expect(faults.map(({ kind, noticedMin }: { kind: string; noticedMin: number }) => [kind, noticedMin])).toEqual([
      ["silence", 309],
    ]);
    const bare = runCommand(["watch", gap, "--json"]);
    expect([bare.code, JSON.parse(bare.err).error.path]).toEqual([2, "--request"]);
  });
});

describe("a studio's firings", () => {
  const data = ["--data", folder];

  test("are listed as they were foretold and as they went", () => {
    const { firings, asLearned } = JSON.parse(runCommand(["firings", ...data, "--json"]).out);
    expect(firings.length).toBeGreaterThan(8);
    const finished = firings.filter(({ against }: { against: object | null }) => against !== null);
    expect(finished.at(-1).against.kWh.actual).toBeGreaterThan(5);
    expect(asLearned.firings).toBeGreaterThan(0);
    const told = runCommand(["firings", ...data]).out;
    expect(told).toMatch(/drew \d+\.\d kWh \(foretold \d+\.\d kWh\)/);
  });

  test("teach, each once", () => {
    const learn = (...more: string[]) => runCommand(["learn", ...data, ...more]);
    const first = learn("--kiln", "the test kiln");
    expect(first.code).toBe(0);
    expect(first.out).toContain("Power of the elements:");
    const again = learn("--kiln", "the test kiln");
    expect([again.code, again.out.startsWith("Nothing new to learn")]).toEqual([1, true]);
    const unknown = learn("--kiln", "the other one", "--json");
    expect([unknown.code, JSON.parse(unknown.err).error]).toEqual([
      2,
      expect.objectContaining({ code: "unknown-kiln", path: "--kiln" }),
    ]);
    const nowhere = runCommand(["firings", "--data", file("none"), "--json"]);
    expect([nowhere.code, JSON.parse(nowhere.err).error.code]).toEqual([2, "no-studio"]);
  });
});
