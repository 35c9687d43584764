import { existsSync, mkdtempSync, readFileSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { parseArgs } from "node:util";
import { beforeAll, describe, expect, test } from "vitest";
import { workOf } from "../firing/heat-work/questions.ts";
import { readProgramme } from "../firing/programme/programme.ts";
import { readLoadPlan } from "../loading/read-load-plan.ts";
import { readLoadRequest } from "../loading/read-load-request.ts";
import { BadInput } from "../measures/bad-input.ts";
import { plannedFiring, wareCurves } from "../studio/planned-firing.ts";
import type { Command, CommandCall } from "./command.ts";
import { heatwork } from "./heatwork.ts";
import { predict } from "./predict.ts";
import { programme as programmeCommand } from "./programme.ts";
import { runCommand } from "./testing/run-command.ts";

const EXAMPLE = new URL("../../examples/first-load/request.json", import.meta.url);
const folder = mkdtempSync(join(tmpdir(), "wareboard-firing-"));
const file = (name: string): string => join(folder, name);
const write = (name: string, value: unknown): string => {
  writeFileSync(file(name), typeof value === "string" ? value : JSON.stringify(value));
  return file(name);
};
const json = (path: string) => JSON.parse(readFileSync(path, "utf8"));

const request = file("request.json");
const plan = file("plan.json");
const programme = { format: "programme/1", name: "to the top", cone: "6", kind: "glaze" };
const climb = [
  { rateCPerHour: 150, targetC: 1120, holdMin: 0 },
  { rateCPerHour: 80, targetC: 1220, holdMin: 10 },
];
const tariff = {
  format: "tariff/1",
  name: "night and day",
  timeZone: "Europe/Berlin",
  currency: "EUR",
  pricePerKWh: 0.34,
  slots: [{ name: "at night", from: "22:00", to: "06:00", pricePerKWh: 0.22 }],
};

beforeAll(() => {
  writeFileSync(request, readFileSync(EXAMPLE));
  write("programme.json", { ...programme, segments: climb });
  write("tariff.json", tariff);
  const weak = json(request);
  weak.kiln.build = { powerW: 3600, ratedVolts: 240, suppliedVolts: 230, wornShare: 0.1 };
  write("weak.json", weak);
  expect(runCommand(["plan", request, "--out", plan, "--seconds", "1"]).code).toBe(0);
});

const predictArgs = (...more: string[]): string[] => ["predict", request, plan, file("programme.json"), ...more];
const predicted = (...more: string[]) => {
  const done = runCommand(predictArgs(...more, "--json"));
  return { ...done, value: done.out === "" ? null : JSON.parse(done.out) };
};

describe("predict", () => {
  test("answers a machine with all that is promised, and balances its energy", () => {
    const { code, value } = predicted();
    expect(code).toBe(0);
    for (const name of ["hours", "kWh", "peakC", "energyResidual"]) expect(value[name]).toEqual(expect.any(Number));
    expect(value.energyResidual).toBeLessThan(1e-10);
    expect(value.levels.map((each: { level: number }) => each.level)).toEqual(
      json(plan).levels.map((_: unknown, i: number) => i),
    );
    for (const level of value.levels) {
      for (const name of ["peakC", "ladder", "offsetC"]) expect(level[name]).toEqual(expect.any(Number));
    }
    expect(Object.keys(value.coolHours)).toEqual(expect.arrayContaining(["200", "95", "50"]));
    expect(value.coolHours["200"]).toBeLessThan(value.coolHours["50"]);
    expect(value.curve[0]).toEqual([0, 20]);
    expect(value.cone).toBe("6");
    expect(value.advice.length).toBeGreaterThan(1);
    expect(value.elements.wornShareLimit).toBeGreaterThan(0);
    expect(value).toMatchObject({ cost: null, start: null });
  });

  test("reckons a tariff by its slots, and finds a start that costs no more", () => {
    const { code, value } = predicted("--tariff", file("tariff.json"), "--start", "2026-11-26T08:00");
    expect(code).toBe(0);
    const { cost, best } = value.start;
    const slots = cost.slots as { kWh: number; pricePerKWh: number }[];
    expect(slots.reduce((sum, each) => sum + each.kWh, 0)).toBeCloseTo(value.kWh, 6);
    expect(value.cost).toBeCloseTo(
      slots.reduce((sum, each) => sum + each.kWh * each.pricePerKWh, 0),
      9,
    );
    // Eight in the morning is day, the best start a night's: 22 of 34 cents at the least.
    expect(value.cost).toBeCloseTo(value.kWh * 0.34, 6);
    expect(best.best.cost.total).toBeLessThan(value.cost);
    expect(best.best.cost.total).toBeGreaterThanOrEqual(value.kWh * 0.22 - 1e-9);
    expect(best.dearest.cost.total).toBeCloseTo(value.cost, 6);
  });

  test("is open by the hour she wants, and not before she is up", () => {
    const { code, value } = predicted(
      ...["--tariff", file("tariff.json"), "--start", "2026-11-26T08:00", "--until", "2026-11-28T08:00"],
      ...["--open-by", "20:00", "--open-from", "08:00"],
    );
    expect(code).toBe(0);
    const opens = value.start.best.best.opensLocal.slice(11, 16);
    expect(opens >= "08:00" && opens <= "20:00").toBe(true);
  });

  test("tells a person the cost, the best start, and what was tried", () => {
    const { code, out } = runCommand(
      predictArgs("--tariff", file("tariff.json"), "--start", "2026-11-26T18:00", "--open-by", "18:00"),
    );
    expect(code).toBe(0);
    expect(out).toMatch(/Started at 2026-11-26T18:00 it costs \d+\.\d\d EUR \(.*kWh at night/);
    expect(out).toMatch(/Best start: 2026-11-2\d \d\d:\d\d, UTC\+01:00, costing \d+\.\d\d EUR/);
    expect(out).toMatch(/Tried in this kiln with this load\n {4}At the probe cone 6 /);
    expect(out).toMatch(/The elements\n {4}At full power/);
  });

  test("answers no where no start fits her hours", () => {
    const done = runCommand(
      predictArgs(
        ...["--tariff", file("tariff.json"), "--start", "2026-11-26T08:00", "--until", "2026-11-26T08:10"],
        ...["--open-by", "07:05", "--open-from", "07:00"],
      ),
    );
    expect(done.code).toBe(1);
    expect(done.out).toMatch(/No start from .* lets it be opened by 07:05 between 07:00 and 07:05\./);
  });

  test("a kiln too weak for the programme answers no, says where it stalls and what to do", () => {
    const args = ["predict", file("weak.json"), plan, file("programme.json")];
    const asPerson = runCommand(args);
    expect(asPerson.code).toBe(1);
    expect(asPerson.out).toMatch(
      /The kiln stalls at \d+ °C in segment 1 and never reaches 1120 °C.*Measure the elements/,
    );
    expect(asPerson.out).toMatch(/short of cone 6/);
    const asMachine = runCommand([...args, "--json"]);
    expect(asMachine.code).toBe(1);
    expect(JSON.parse(asMachine.out)).toMatchObject({ finished: false, advice: [], elements: { verdict: "no" } });
  });

  test("the pages it draws carry the cost", () => {
    const out = file("firing.svg");
    const args = ["--tariff", file("tariff.json"), "--start", "2026-11-26T08:00", "--out", out];
    expect(runCommand(predictArgs(...args)).code).toBe(0);
    expect(readFileSync(out, "utf8").replaceAll(/<[^>]*>/g, " ")).toMatch(/EUR/);
  });
});

describe("programme", () => {
  test("with a load in a kiln, reaches the cone at the ware's mean level there, and no more than whole degrees need", () => {
    const out = file("aimed.json");
    const done = runCommand(["programme", "--cone", "6", "--request", request, "--plan", plan, "--out", out]);
    expect(done.code).toBe(0);
    expect(done.out).toMatch(
      /in this kiln with this load; work 1\.0\d of the cone.*at the mean of the levels that hold ware/,
    );
    const read = readLoadRequest(json(request));
    const curves = wareCurves(plannedFiring(read, readLoadPlan(json(plan), read), "glaze", 20));
    const aimed = readProgramme(json(out));
    expect(workOf("6", curves(aimed))).toBeGreaterThanOrEqual(1);
    // Both the top and the climb that ends 100 °C below it move.
    const cooler = aimed.segments.map((segment) =>
      segment.targetC > 1000 ? { ...segment, targetC: segment.targetC - 2 } : segment,
    );
    expect(workOf("6", curves({ ...aimed, segments: cooler }))).toBeLessThan(1);
  });

  test("a kiln too weak answers no, in a sentence, and writes nothing", () => {
    const out = file("never.json");
    const args = ["programme", "--cone", "6", "--request", file("weak.json"), "--plan", plan, "--out", out];
    const asPerson = runCommand(args);
    expect(asPerson.code).toBe(1);
    expect(asPerson.out.trim().split("\n")).toHaveLength(1);
    expect(asPerson.out).toMatch(/cone 6, which this kiln does not reach .* more power\./);
    expect(existsSync(out)).toBe(false);
    expect(JSON.parse(runCommand([...args, "--json"]).out)).toMatchObject({ reaches: false });
  });
});

describe("bad input ends in one clear sentence and exit code 2", () => {
  /** What a command refuses with, run here: `main` makes exit code 2 of it, as the last cases see. */
  const refusal = async (command: Command, args: readonly string[]): Promise<string> => {
    const { positionals, values } = parseArgs({ args: [...args], options: command.options, allowPositionals: true });
    const call = { words: positionals, options: values as CommandCall["options"], json: false };
    try {
      await command.run(call);
    } catch (error) {
      if (!(error instanceof BadInput)) throw error;
      expect(error.message.split("\n")).toHaveLength(1);
      return error.message;
    }
    throw new Error(`${command.name} took it`);
  };
  const withSegment = (change: object) => ({ ...programme, segments: [{ ...climb[0], ...change }, climb[1]] });
  test.each([
    [
      "negative-rate.json",
      withSegment({ rateCPerHour: -150 }),
      /segments\[0\]\.rateCPerHour: found -150; expected a rate above 0/,
    ],
    ["fahrenheit.json", withSegment({ targetC: 2232 }), /segments\[0\]\.targetC: found 2232; expected .*at most 1450/],
    ["no-segments.json", { ...programme, segments: [] }, /segments: found a list of 0/],
    ["no-cone.json", { ...programme, cone: "6x", segments: climb }, /cone: found "6x"; expected a cone/],
  ])("a programme: %s", async (name, value, sentence) => {
    expect(await refusal(predict, [request, plan, write(name, value)])).toMatch(sentence);
  });

  test.each([
    ["negative-price.json", { ...tariff, pricePerKWh: -0.3 }, /negative-price\.json, pricePerKWh: found -0.3/],
    ["nowhere.json", { ...tariff, timeZone: "Shed/Back" }, /timeZone: found "Shed\/Back"; expected an IANA time zone/],
    ["no-time.json", { ...tariff, slots: [{ ...tariff.slots[0], to: "6 am" }] }, /slots\[0\]\.to: found "6 am"/],
  ])("a tariff: %s", async (name, value, sentence) => {
    const args = predictArgs("--tariff", write(name, value), "--start", "2026-11-26T18:00");
    expect(await refusal(predict, args.slice(1))).toMatch(sentence);
  });

  test.each([
    [["--tariff", "tariff.json"], /--start: found nothing; expected when it starts/],
    [["--tariff", "tariff.json", "--start", "soon"], /--start: found "soon"; expected a date and time/],
    [["--tariff", "tariff.json", "--start", "2027-03-28T02:30"], /--start: .*Europe\/Berlin skips that day/],
    [["--tariff", "tariff.json", "--start", "2026-10-25T02:30"], /--start: .*shows twice that day/],
    [["--tariff", "tariff.json", "--start", "2026-11-26T18:00", "--open-by", "25:00"], /--open-by: found "25:00"/],
    [["--tariff", "tariff.json", "--start", "2026-11-26T18:00", "--until", "2026-11-25T18:00"], /--until: found/],
    [["--tariff", "tariff.json", "--start", "2026-11-26T18:00", "--open-from", "08:00"], /--open-from: .*--open-by/],
    [["--tariff", "tariff.json", "--start", "2026-11-26T18:00", "--price", "0.3"], /--price: .*one of the two/],
    [["--start", "2026-11-26T18:00"], /--start: found no --tariff/],
    [["--price=-0.3"], /--price: found "-0.3"; expected a number from 0/],
    [["--room", "200"], /--room: found "200"; expected a number from -20 to 50/],
  ])("%j", async (args, sentence) => {
    const whole = predictArgs(...args.map((each) => (each === "tariff.json" ? file(each) : each)));
    expect(await refusal(predict, whole.slice(1))).toMatch(sentence);
  });

  test.each([
    [["--cone", "6", "--request", "request.json"], /--plan: found nothing; expected both --request and --plan/],
    [["--cone", "6", "--room", "10"], /--request: found nothing/],
    [["--cone", "6x"], /--cone: found "6x"/],
    [["--cone", "6", "--kind", "lustre"], /cone 6 for a lustre firing/],
    [["--cone", "6", "--hold=-5"], /--hold: found "-5"; expected a number from 0/],
  ])("programme %j", async (args, sentence) => {
    expect(await refusal(programmeCommand, args)).toMatch(sentence);
  });

  test.each([
    ["three.csv", "elapsedMin,tempC\n0,20\n60,600\n120,1222\n", /found 3 readings; expected .* at least 5/],
    [
      "unit.csv",
      ["elapsedMin,tempC", ...Array.from({ length: 110 }, (_, i) => `${i * 5},${68 + i * 20}`)].join("\n"),
      /tempC: found 40 readings up to 2248 °C; .*if these are °F, it is 1231 °C/,
    ],
    ["empty.csv", "", /empty|no rows/],
  ])("a log: %s", async (name, text, sentence) => {
    const message = await refusal(heatwork, [write(name, text)]);
    expect(message).toMatch(sentence);
    expect(message).toContain(name);
  });

  test.each([
    ["predict", () => predictArgs("--tariff", file("tariff.json"))],
    ["programme", () => ["programme", "--cone", "6x"]],
    ["heatwork", () => ["heatwork", write("two.csv", "elapsedMin,tempC\n0,20\n60,600\n")]],
  ])("%s ends with exit code 2, for a person and for a machine", (_, args) => {
    const asPerson = runCommand(args());
    expect(asPerson).toMatchObject({ code: 2, out: "" });
    expect(asPerson.err.trim().split("\n")).toHaveLength(1);
    const asMachine = runCommand([...args(), "--json"]);
    expect(asMachine.code).toBe(2);
    expect(JSON.parse(asMachine.err).error.message).toBe(asPerson.err.trim());
  });
});
