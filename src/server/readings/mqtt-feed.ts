import { createHash } from "node:crypto";
import mqtt, { type MqttClient } from "mqtt";
import { BadInput } from "../../measures/bad-input.ts";
import type { LoggerRecord } from "../../studio/records/logger-record.ts";
import type { Feed } from "./feed.ts";
import type { Loggers } from "./loggers.ts";
import { loggerNames, type MqttWish, readMessage, topicsOf } from "./mqtt-message.ts";

const COME_BACK_MS = 5000;
/** What the broker held back for us comes within this after we are there again. */
const HELD_BACK_MS = 1000;
/** The same trouble of the same topic is told once an hour. */
const TOLD_AGAIN_MS = 60 * 60_000;

/** What the feed needs of the server. */
export interface MqttSetting {
  readonly wish: MqttWish;
  readonly loggers: Pick<Loggers, "named">;
  readonly feed: Pick<Feed, "take">;
  /** The server's own random key: the broker knows us again by it, and holds back what came while we were away. */
  readonly key: Buffer;
  readonly now: () => string;
  /** Told in words where the broker is away or back, and what could not be read. */
  readonly say: (words: string) => void;
  readonly complain: (error: Error) => void;
  readonly comeBackMs?: number;
}

/**
 * Listens at an MQTT broker (3.1.1, OASIS), at quality of service 1: a message is acknowledged once its readings are on
 * the disk, and until then the broker sends it again. It only listens; it never publishes.
 */
export class MqttFeed {
  readonly #setting: MqttSetting;
  readonly #client: MqttClient;
  readonly #told = new Map<string, number>();
  #isHere: boolean | null = null;
  #hereSinceMs = 0;
  #isClosing = false;

  constructor(setting: MqttSetting) {
    this.#setting = setting;
    const { wish, key, comeBackMs = COME_BACK_MS } = setting;
    this.#client = mqtt.connect(wish.url, {
      clientId: `wareboard-${createHash("sha256").update(key).update("mqtt").digest("hex").slice(0, 12)}`,
      clean: false,
      reconnectPeriod: comeBackMs,
      connectTimeout: 10_000,
      reconnectOnConnackError: true,
    });
    this.#client.on("connect", () => this.#arrived());
    this.#client.on("close", () => this.#left("no answer"));
    this.#client.on("error", (error) => this.#left(inWords(error)));
    this.#client.handleMessage = (packet, done) => {
      // Never with an error: the client would let go of the broker for one message that cannot be read.
      this.#take(packet.topic, packet.payload as Uint8Array, packet.retain === true).then(() => done(), done);
    };
  }

  async close(): Promise<void> {
    this.#isClosing = true;
    await this.#client.endAsync(true);
  }

  #arrived(): void {
    const { wish, say } = this.#setting;
    this.#hereSinceMs = performance.now();
    if (this.#isHere !== true) say(`Listening for temperatures at ${place(wish)}.`);
    this.#isHere = true;
    this.#client.subscribe(topicsOf(wish), { qos: 1 }, (error) => {
      if (error && !this.#isClosing) say(`The MQTT broker does not let us listen to ${wish.topic}: ${error.message}.`);
    });
  }

  #left(why: string): void {
    if (this.#isHere === false || this.#isClosing) return;
    this.#isHere = false;
    const { wish, say } = this.#setting;
    say(`The MQTT broker at ${place(wish)} is away (${why}). Trying again every few seconds.`);
  }

  async #take(topic: string, payload: Uint8Array, isRetained: boolean): Promise<void> {
    const { wish, feed, now } = this.#setting;
    try {
      const logger = await this.#loggerOf(topic);
      const { readings, isDated } = readMessage(payload, wish.unit, now());
      // One that was held back, or left standing, and does not say when it was, is of nobody knows when.
      if (!isDated && (isRetained || performance.now() - this.#hereSinceMs < HELD_BACK_MS)) return;
      // The client takes one message after another: nothing that could share a transaction is on its way.
      await this.#untilKept(() => feed.take(logger, readings, 0));
    } catch (error) {
      if (error instanceof BadInput) this.#tellOnce(topic, error);
      else this.#setting.complain(error as Error);
    }
  }

  async #loggerOf(topic: string): Promise<LoggerRecord> {
    const names = loggerNames(this.#setting.wish, topic);
    for (const name of names) {
      const logger = await this.#setting.loggers.named(name);
      if (logger !== null) return logger;
    }
    throw new BadInput({
      code: "unknown-logger",
      path: topic,
      found: "a message of no logger that is kept",
      expected: `one logger named "${names[0]}"; add it under Kilns`,
    });
  }

  /** A store that fails is tried again: the message is not acknowledged until its readings are kept. */
  async #untilKept(keep: () => Promise<unknown>): Promise<void> {
    while (!this.#isClosing) {
      try {
        await keep();
        return;
      } catch (error) {
        if (error instanceof BadInput && error.code !== "store-busy") throw error;
        this.#setting.complain(error as Error);
        await new Promise((resolve) => setTimeout(resolve, this.#setting.comeBackMs ?? COME_BACK_MS).unref());
      }
    }
  }

  #tellOnce(topic: string, { code, message }: BadInput): void {
    const now = performance.now();
    const about = `${topic} ${code}`;
    if (now - (this.#told.get(about) ?? -Infinity) < TOLD_AGAIN_MS) return;
    this.#told.set(about, now);
    this.#setting.say(`A message on ${topic} was not kept. ${message}`);
  }
}

/** Where the broker is, without a password. */
function place({ url, topic }: MqttWish): string {
  const { protocol, host } = new URL(url);
  return `${protocol}//${host}, topic ${topic}`;
}

function inWords(error: Error & { code?: unknown }): string {
  if (error.message !== "") return error.message;
  return typeof error.code === "string" ? error.code : "no answer";
}
