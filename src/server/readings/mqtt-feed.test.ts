import { randomBytes } from "node:crypto";
import mqtt from "mqtt";
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, test } from "vitest";
import { BadInput } from "../../measures/bad-input.ts";
import * as sample from "../../store/testing/sample-records.ts";
import type { LoggerRecord } from "../../studio/records/logger-record.ts";
import type { Reading } from "../../studio/records/reading.ts";
import { testBroker } from "../testing/mosquitto.ts";
import { testStudio } from "../testing/test-studio.ts";
import { MqttFeed } from "./mqtt-feed.ts";
import { loggerNames, type MqttWish, readMessage } from "./mqtt-message.ts";

const NOW = "2026-11-25T09:00:00.000Z";
const bytes = (text: string) => new TextEncoder().encode(text);

describe("a message", () => {
  const wish = { url: "mqtt://here", topic: "studio/kiln", unit: "C" } as const;

  test("is JSON as by HTTP, or a bare number in the unit given", () => {
    expect(readMessage(bytes('{"tempF":212,"at":"2026-11-25T08:00:00Z"}'), "C", NOW)).toEqual({
      readings: [{ at: "2026-11-25T08:00:00.000Z", tempC: 100 }],
      isDated: true,
    });
    expect(readMessage(bytes(" 212 "), "F", NOW)).toEqual({ readings: [{ at: NOW, tempC: 100 }], isDated: false });
    expect(readMessage(bytes("212 F"), "C", NOW).readings[0]?.tempC).toBe(100);
    for (const odd of ["", "hot", "{", "[1]", '{"tempC":"1"}', "\0"]) {
      expect(() => readMessage(bytes(odd), "C", NOW), odd).toThrow(BadInput);
    }
  });

  test("names its logger by the level after the topic, or by the one the + stands for", () => {
    expect(loggerNames(wish, "studio/kiln/lid")).toEqual(["lid", "studio/kiln/lid"]);
    expect(loggerNames(wish, "studio/kiln")).toEqual(["studio/kiln"]);
    expect(loggerNames({ ...wish, topic: "house/+/temperature" }, "house/shed/temperature")[0]).toBe("shed");
  });
});

const broker = await testBroker();
if (typeof broker === "string") test.skip(`readings by MQTT: ${broker}`, () => {});
else {
  describe("readings by MQTT", () => {
    const wish: MqttWish = { url: broker.url, topic: "studio/kiln", unit: "C" };
    const key = randomBytes(32);
    let kept: { name: string; readings: readonly Reading[] }[];
    let said: string[];
    let breaks: number;
    let feed: MqttFeed;
    const listen = () =>
      new MqttFeed({
        wish,
        key,
        loggers: { named: async (name) => (name === "shed" ? ({ name } as LoggerRecord) : null) },
        feed: {
          take: async ({ name }, readings) => {
            if (breaks-- > 0) throw new Error("the disk is full");
            kept.push({ name, readings });
            return { kept: readings.length, leftAside: 0 };
          },
        },
        now: () => NOW,
        say: (words) => said.push(words),
        complain: (error) => said.push(error.message),
        comeBackMs: 100,
      });
    const until = async (what: () => boolean) => {
      for (let tries = 0; tries < 1200 && !what(); tries++) await new Promise((resolve) => setTimeout(resolve, 25));
      expect(what(), JSON.stringify({ kept, said })).toBe(true);
    };
    const publish = async (...messages: readonly (readonly [topic: string, text: string, retain?: boolean])[]) => {
      const sender = await mqtt.connectAsync(broker.url);
      for (const [topic, text, retain = false] of messages) await sender.publishAsync(topic, text, { qos: 1, retain });
      await sender.endAsync();
    };
    const dated = (second: number) => JSON.stringify({ at: `2026-11-25T08:00:0${second}Z`, tempC: second });
    const temps = () => kept.flatMap(({ readings }) => readings.map(({ tempC }) => tempC));

    beforeAll(() => broker.start());
    afterAll(() => broker.stop());
    beforeEach(async () => {
      [kept, said, breaks] = [[], [], 0];
      feed = listen();
      await until(() => said.length > 0);
    });
    afterEach(() => feed.close());

    test("are kept for the logger their topic names; what cannot be read is told once, in words", async () => {
      expect(said).toEqual([expect.stringMatching(/^Listening for temperatures at mqtt:.*studio\/kiln\.$/)]);
      await publish(["studio/kiln/shed", dated(1)], ["studio/kiln/nobody", dated(2)], ["studio/kiln/nobody", dated(3)]);
      await publish(["studio/kiln/shed", "{"], ["studio/kiln/shed", dated(4)], ["elsewhere/shed", dated(5)]);
      await until(() => temps().length === 2);
      expect(temps()).toEqual([1, 4]);
      expect(said.slice(1)).toEqual([
        expect.stringContaining('one logger named "nobody"'),
        expect.stringContaining("studio/kiln/shed was not kept"),
      ]);
    });

    test("a broker that goes away is told of, and come back to; what came meanwhile is not lost", async () => {
      await broker.stop();
      await until(() => said.some((words) => words.includes("is away")));
      await broker.start();
      await until(() => said.filter((words) => words.startsWith("Listening")).length === 2);
      await publish(["studio/kiln/shed", dated(1)]);
      await until(() => temps().length === 1);
      // While we are away, the broker holds back what is sent; only what says when it was is kept then.
      await feed.close();
      await publish(["studio/kiln/shed", dated(2)], ["studio/kiln/shed", "777"], ["studio/kiln/shed", dated(3)]);
      feed = listen();
      await until(() => temps().length === 3);
      expect(temps()).toEqual([1, 2, 3]);
    });

    test("reach the firing under way of a served studio", async () => {
      const started = { startedAt: "2026-11-25T07:00:00.000Z", endedAt: null, programme: null, loadId: null } as const;
      const said: string[] = [];
      const more = { mqtt: { ...wish, topic: "house/+/temperature" }, say: (words: string) => said.push(words) };
      const studio = await testStudio({ more });
      await studio.store.write(async (records) => {
        await records.kilns.add(sample.kiln());
        await records.firings.add(sample.firing("hot", { ...started, state: "firing", meterReadings: [] }));
        const stamps = { createdAt: sample.MOMENT, changedAt: sample.MOMENT };
        const tokenHash = "0".repeat(64);
        await records.loggers.add({ id: "l", kilnId: "kiln-1", probe: "lid", name: "shed", tokenHash, ...stamps });
      });
      await until(() => said.length > 0);
      await publish(["house/shed/temperature", dated(5)], ["house/barn/temperature", dated(6)]);
      await expect
        .poll(() => studio.store.read(({ readings }) => readings.of("hot")), { timeout: 30_000 })
        .toEqual([{ firingId: "hot", probe: "lid", readings: [{ at: "2026-11-25T08:00:05.000Z", tempC: 5 }] }]);
      await studio.end();
    });

    test("a message whose readings could not be kept is tried until they are", async () => {
      breaks = 2;
      await publish(["studio/kiln/shed", dated(7)]);
      await until(() => temps().length === 1);
      expect(said.filter((words) => words === "the disk is full")).toHaveLength(2);
    });
  });
}
