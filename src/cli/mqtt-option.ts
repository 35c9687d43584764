import { BadInput, shown } from "../measures/bad-input.ts";
import type { MqttWish } from "../server/readings/mqtt-message.ts";
import type { CommandCall } from "./command.ts";
import { choiceOption } from "./options.ts";

const USUAL_TOPIC = "studio/kiln";
const MOST_TOPIC_LETTERS = 200;

/** The broker that temperatures are listened to at, or null. @throws BadInput naming the option */
export function mqttOption(call: CommandCall): MqttWish | null {
  // Whoever else uses this machine may read a program's options, and not its variables.
  const { mqtt: url = process.env.WAREBOARD_MQTT, "mqtt-topic": topic = USUAL_TOPIC } = call.options;
  if (url === undefined) {
    const alone = (["mqtt-topic", "mqtt-unit"] as const).find((name) => call.options[name] !== undefined);
    if (alone === undefined) return null;
    throw refused(`--${alone}`, "no --mqtt beside it", "--mqtt mqtt://host as well", "missing-option");
  }
  if (typeof url !== "string" || !/^(mqtts?|wss?):\/\/[^/\s]/.test(url) || !URL.canParse(url)) {
    throw refused("--mqtt", "no address of a broker", "mqtt://host, mqtts://host, or with its port, mqtt://host:1883");
  }
  // One + stands for the logger's name; # would take in everything below (MQTT 3.1.1, 4.7.1).
  const plus = String(topic)
    .split("/")
    .filter((level) => level.includes("+"));
  const isTopic = typeof topic === "string" && topic !== "" && topic.length <= MOST_TOPIC_LETTERS;
  if (!isTopic || /[#\0]/.test(topic) || plus.length > 1 || plus.some((level) => level !== "+")) {
    throw refused("--mqtt-topic", shown(topic), "a topic such as studio/kiln, or house/+/temperature with one + in it");
  }
  return { url, topic, unit: choiceOption(call, "mqtt-unit", ["C", "F"], "C") };
}

const refused = (path: string, found: string, expected: string, code = "wrong-option"): BadInput =>
  new BadInput({ code, path, found, expected });
