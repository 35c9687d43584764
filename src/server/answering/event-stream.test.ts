import fastify from "fastify";
import { expect, test } from "vitest";
import { type EventStream, EventStreams } from "./event-stream.ts";

test("a browser that reads nothing is let go before it fills the memory", async () => {
  const streams = new EventStreams();
  let stream: EventStream | null = null;
  let gone = false;
  const app = fastify();
  app.get("/", (_request, reply) => {
    stream = streams.begin(reply, () => {
      gone = true;
    });
  });
  const address = await app.listen({ port: 0, host: "127.0.0.1" });
  // The answer is there, and nobody reads on.
  const answer = await fetch(address);
  const event = { text: "x".repeat(100_000) };
  let sent = 0;
  for (; !gone && sent < 2000; sent++) {
    (stream as EventStream | null)?.send(event);
    await new Promise((resolve) => setImmediate(resolve));
  }
  expect(gone).toBe(true);
  // What the system holds for it, and 4 MB of ours.
  expect(sent * event.text.length).toBeLessThan(50_000_000);
  expect(streams.count).toBe(0);
  await answer.body?.cancel().catch(() => {});
  await app.close();
});
