import { BadInput, shown } from "../../measures/bad-input.ts";
import { parseTemperatureC, type TemperatureUnits } from "../../measures/temperature.ts";
import type { Reading } from "../../studio/records/reading.ts";
import { readSent } from "./sent-reading.ts";

/** A broker to listen at. */
export interface MqttWish {
  /** Such as `mqtt://localhost:1883`, with a name and password where the broker asks for them. */
  readonly url: string;
  /** Such as `studio/kiln`, or `house/+/temperature`, where the `+` stands for the logger's name. */
  readonly topic: string;
  /** The unit of a bare number. */
  readonly unit: TemperatureUnits;
}

/** What a message said. */
export interface HeardReadings {
  readonly readings: readonly Reading[];
  /** True where each says when it was. */
  readonly isDated: boolean;
}

/** The topics to listen to: a topic without a `+` also has one below it for each logger. */
export const topicsOf = ({ topic }: MqttWish): string[] => (topic.includes("+") ? [topic] : [topic, `${topic}/+`]);

/** What in a message's topic may be the name of its logger: the level that the `+` stands for, or the whole topic. */
export function loggerNames(wish: MqttWish, topic: string): string[] {
  const pattern = (topicsOf(wish).at(-1) as string).split("/");
  const levels = topic.split("/");
  const level = levels.length === pattern.length ? levels[pattern.indexOf("+")] : undefined;
  return level === undefined ? [topic] : [level, topic];
}

/**
 * Reads a message: JSON as it is sent by HTTP, or a bare number.
 *
 * @throws BadInput where it is neither
 */
export function readMessage(payload: Uint8Array, unit: TemperatureUnits, now: string): HeardReadings {
  const text = new TextDecoder().decode(payload).trim();
  if (!text.startsWith("{")) {
    return { readings: [{ at: now, tempC: parseTemperatureC(text.slice(0, 40), unit, "payload") }], isDated: false };
  }
  const sent = fromJson(text);
  const all = (Array.isArray(sent.readings) ? sent.readings : [sent]) as readonly { at?: unknown }[];
  return { readings: readSent(sent, now), isDated: all.every((each) => each?.at !== undefined) };
}

function fromJson(text: string): { readonly readings?: unknown } {
  try {
    return JSON.parse(text) as { readings?: unknown };
  } catch {
    throw new BadInput({
      code: "not-json",
      path: "payload",
      found: shown(text),
      expected: '{"tempC": 1222}, {"readings": […]}, or a bare number',
    });
  }
}
