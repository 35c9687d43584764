import { expect, test } from "vitest";
import { BadInput } from "../measures/bad-input.ts";
import { mqttOption } from "./mqtt-option.ts";

const read = (options: Record<string, string>) => mqttOption({ words: [], options, json: false });

test("a broker is an address and a topic with at most one + in it", () => {
  expect(read({})).toBeNull();
  expect(read({ mqtt: "mqtt://localhost" })).toEqual({ url: "mqtt://localhost", topic: "studio/kiln", unit: "C" });
  const topic = "house/+/temperature";
  expect(read({ mqtt: "mqtts://u:p@10.0.0.2:8883", "mqtt-topic": topic, "mqtt-unit": "F" })).toMatchObject({
    topic,
    unit: "F",
  });
  const wrong = [
    { "mqtt-topic": "a" },
    { mqtt: "localhost" },
    { mqtt: "http://localhost" },
    { mqtt: "mqtt://" },
    ...["", "#", "a/#", "+/+", "a+/b", "x".repeat(300)].map((bad) => ({ mqtt: "mqtt://h", "mqtt-topic": bad })),
    { mqtt: "mqtt://h", "mqtt-unit": "K" },
  ];
  for (const options of wrong)
    expect(() => read(options as Record<string, string>), JSON.stringify(options)).toThrow(BadInput);
});

test("a password in the address stands in no error", () => {
  expect(() => read({ mqtt: "htp://kiln:a-secret@h" })).toThrow(
    expect.not.objectContaining({ found: expect.stringContaining("a-secret") }),
  );
});
