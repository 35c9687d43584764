import { afterAll, beforeAll, describe, expect, test } from "vitest";
import * as sample from "../../store/testing/sample-records.ts";
import { newToken } from "../readings/loggers.ts";
import { type TestStudio, testStudio } from "../testing/test-studio.ts";

// The studio's clock begins at 2026-11-25T09:00:00.000Z.
const STARTED = "2026-11-25T08:00:00.000Z";
const stamps = { createdAt: sample.MOMENT, changedAt: sample.MOMENT };
const { token, tokenHash } = newToken();
const logger = { id: "logger-1", kilnId: "kiln-1", probe: "thermocouple", name: "kiln shed", tokenHash, ...stamps };

let studio: TestStudio;
beforeAll(async () => {
  // Locked: a logger has no cookie, and needs none.
  studio = await testStudio({ locked: true });
  await studio.store.write(async (records) => {
    await records.kilns.add(sample.kiln(), { ...sample.kiln("kiln-2"), rules: {} });
    const empty = { loadId: null, programme: null, endedAt: null, meterReadings: [] };
    await records.firings.add(
      sample.firing("firing-1", { ...empty, state: "firing", startedAt: STARTED }),
      sample.firing("firing-0", {
        ...empty,
        state: "finished",
        startedAt: "2026-11-24T08:00:00.000Z",
        endedAt: "2026-11-24T20:00:00.000Z",
      }),
    );
    await records.loggers.add(logger, { ...logger, id: "logger-2", kilnId: "kiln-2", tokenHash: newToken().tokenHash });
  });
});
afterAll(() => studio.end());

const send = (body: unknown, headers: Record<string, string> = { authorization: `Bearer ${token}` }) =>
  studio.ask("POST", "/readings", { payload: JSON.stringify(body), headers });
const kept = (firingId: string) => studio.store.read((records) => records.readings.of(firingId));

describe("readings from a logger", () => {
  test("one or many, in °C or °F, are on the disk once they are answered; twice does no harm", async () => {
    const first = await send({ at: "2026-11-25T08:30:00Z", tempF: 212 });
    expect([first.statusCode, first.json()]).toEqual([200, { kept: 1, leftAside: 0 }]);
    const many = [
      { at: "2026-11-25T09:31:00.250+01:00", tempC: 101.5 },
      { at: "2026-11-25T08:30:00Z", tempC: 100 },
    ];
    expect((await send({ readings: many })).json()).toEqual({ kept: 2, leftAside: 0 });
    expect((await send({ readings: many })).json()).toEqual({ kept: 2, leftAside: 0 });
    expect(await kept("firing-1")).toEqual([
      {
        firingId: "firing-1",
        probe: "thermocouple",
        readings: [
          { at: "2026-11-25T08:30:00.000Z", tempC: 100 },
          { at: "2026-11-25T08:31:00.250Z", tempC: 101.5 },
        ],
      },
    ]);
  });

  test("without a moment are of now", async () => {
    await send({ tempC: 110 });
    expect((await kept("firing-1"))[0]?.readings.at(-1)?.at).toMatch(/^2026-11-25T09:00:0/);
  });

  test("that come late go to the firing they were of; those of no firing are left aside", async () => {
    const late = [
      { at: "2026-11-24T19:00:00Z", tempC: 900 },
      { at: "2026-11-24T23:00:00Z", tempC: 600 },
    ];
    expect((await send({ readings: late })).json()).toEqual({ kept: 1, leftAside: 1 });
    expect((await kept("firing-0"))[0]?.readings).toEqual([{ at: "2026-11-24T19:00:00.000Z", tempC: 900 }]);
    const before = await send({ at: "2026-11-23T19:00:00Z", tempC: 20 });
    expect([before.statusCode, before.json().error.code]).toEqual([409, "no-firing-under-way"]);
  });

  test("are refused in words: no token, another's, a field there is none of, two temperatures, a clock ahead", async () => {
    const refusals = [
      await send({ tempC: 1 }, {}),
      await send({ tempC: 1 }, { authorization: `Bearer ${newToken().token}` }),
      await send({ tempC: 1, switch: "on" }),
      await send({ readings: [{ tempC: 1 }, { tempC: 1, tempF: 1 }] }),
      await send({ at: "2026-11-25T09:30:00Z", tempC: 1 }),
      await send({ at: "2026-11-25T08:30:00", tempC: 1 }),
      await send({ at: "2026-02-30T08:30:00Z", tempC: 1 }),
      await send({ tempC: 99_999 }),
      await send("hot"),
    ];
    expect(refusals.map((answer) => [answer.statusCode, answer.json().error.code, answer.json().error.path])).toEqual([
      [401, "token-asked", "authorization"],
      [401, "token-asked", "authorization"],
      [400, "unknown-field", "switch"],
      [400, "one-temperature", "readings[1]"],
      [400, "clock-ahead", "at"],
      [400, "not-a-moment", "at"],
      [400, "not-a-time", "at"],
      [400, "out-of-range", "readings[0].tempC"],
      [400, "not-an-object", ""],
    ]);
    expect(refusals[0]?.headers["www-authenticate"]).toBe("Bearer");
  });

  test("one that cannot be kept spoils no other's that came with it", async () => {
    const [good, bad] = await Promise.all([send({ at: STARTED, tempC: 21 }), send({ tempC: -5000 })]);
    expect([good.statusCode, bad.statusCode]).toEqual([200, 400]);
    expect((await kept("firing-1"))[0]?.readings[0]).toEqual({ at: STARTED, tempC: 21 });
  });

  test("a logger that is taken out is heard no more, and one added anew tells its token once", async () => {
    const passed = await studio.ask("POST", "/session", {
      payload: JSON.stringify({ passphrase: "four words of clay" }),
    });
    const cookie = String(passed.headers["set-cookie"]).split(";", 1)[0] as string;
    const headers = { cookie };
    const input = { kilnId: "kiln-1", probe: "lid", name: "lid" };
    expect((await studio.ask("POST", "/loggers", { payload: JSON.stringify(input) })).statusCode).toBe(401);
    const made = (await studio.ask("POST", "/loggers", { payload: JSON.stringify(input), headers })).json();
    expect(made.token).toMatch(/^[A-Za-z0-9_-]{43}$/);
    expect((await studio.ask("GET", `/loggers/${made.id}`, { headers })).json()).not.toHaveProperty("token");
    const bearer = { authorization: `Bearer ${made.token}` };
    expect((await send({ tempC: 5 }, bearer)).statusCode).toBe(200);
    const gone = JSON.stringify({ key: "gone", input: { id: made.id } });
    expect((await studio.ask("POST", "/commands/remove-logger", { payload: gone, headers })).statusCode).toBe(200);
    expect((await send({ tempC: 5 }, bearer)).statusCode).toBe(401);
  });

  test("a token opens nothing but this", async () => {
    const answer = await studio.ask("GET", "/firings", { headers: { authorization: `Bearer ${token}` } });
    expect(answer.statusCode).toBe(401);
  });
});
