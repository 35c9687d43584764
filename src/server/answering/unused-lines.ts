import type { IncomingMessage } from "node:http";
import type { Socket } from "node:net";
import type { FastifyInstance } from "fastify";

/**
 * Browsers open lines ahead of any question, and keep them. Node closes a line that waits for its next question when a
 * server stops, but waits a minute for one that never had its first.
 */
export function closeUnusedLines(app: FastifyInstance): void {
  const unused = new Map<string, Socket>();
  const nameOf = ({ remoteAddress, remotePort }: Socket): string => `${remoteAddress} ${remotePort}`;
  let isClosing = false;
  app.server.on("connection", (line: Socket) => {
    if (isClosing) {
      line.destroy();
      return;
    }
    const name = nameOf(line);
    unused.set(name, line);
    line.once("close", () => unused.delete(name));
  });
  app.server.on("request", ({ socket }: IncomingMessage) => unused.delete(nameOf(socket)));
  app.addHook("preClose", async () => {
    isClosing = true;
    for (const line of unused.values()) line.destroy();
  });
}
