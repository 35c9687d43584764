import type { FastifyReply } from "fastify";

/** A browser that has so much unread is too slow, or asleep: it is let go and comes back by itself. */
const MOST_UNREAD_BYTES = 4 * 1024 * 1024;
const HEARTBEAT_MS = 20_000;
/** A phone that went away without a word holds its line open; it is not waited for longer. */
const LAST_WORD_MS = 500;

/** Server-sent events to one browser (WHATWG HTML, 9.2): JSON in each. */
export interface EventStream {
  /** Sends; does nothing once the other side is gone. */
  readonly send: (value: unknown) => void;
  readonly end: () => void;
}

/** The streams of one server, so that they can be ended when it stops. */
export class EventStreams {
  readonly #open = new Set<EventStream>();

  get count(): number {
    return this.#open.size;
  }

  /**
   * Answers a request with a stream.
   *
   * @param onGone called once, when the stream has ended from either side
   */
  begin(reply: FastifyReply, onGone: () => void): EventStream {
    reply.hijack();
    const { raw } = reply;
    const { socket } = raw;
    raw.writeHead(200, {
      ...reply.getHeaders(),
      "content-type": "text/event-stream; charset=utf-8",
      "cache-control": "no-store",
      // Nothing else comes on this line: a server that stops need not wait for what might.
      connection: "close",
      // Proxies that keep things back would hold the stream.
      "x-accel-buffering": "no",
    } as Record<string, string>);
    // At once, so that the browser knows it is heard; and how soon to come back.
    raw.write("retry: 1000\n\n");
    const heartbeat = setInterval(() => write(": here\n\n"), HEARTBEAT_MS);
    heartbeat.unref();
    const write = (text: string): void => {
      if (raw.destroyed || raw.writableEnded) return;
      raw.write(text);
      if (raw.writableLength > MOST_UNREAD_BYTES) raw.destroy();
    };
    const stream: EventStream = {
      send: (value) => write(`data: ${JSON.stringify(value)}\n\n`),
      end: () => {
        if (raw.writableEnded) return;
        raw.end();
        // The answer lets go of its line once it is written out, but the line may still be held from the other side.
        setTimeout(() => socket?.destroy(), LAST_WORD_MS).unref();
      },
    };
    this.#open.add(stream);
    raw.once("close", () => {
      clearInterval(heartbeat);
      this.#open.delete(stream);
      onGone();
    });
    return stream;
  }

  endAll(): void {
    for (const stream of this.#open) stream.end();
  }
}
