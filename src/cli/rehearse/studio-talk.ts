import { randomUUID } from "node:crypto";
import type { CommandAnswer } from "../../studio/api/contract.ts";

/** A studio spoken to as every other program does: over HTTP. */
export interface StudioTalk {
  readonly get: <Answer>(path: string) => Promise<Answer>;
  readonly post: <Answer>(path: string, body: object, token?: string) => Promise<Answer>;
  readonly command: (name: string, input: object) => Promise<CommandAnswer>;
}

/** @param address such as `http://localhost:7421` */
export function studioTalk(address: string): StudioTalk {
  const asked = async <Answer>(path: string, init: RequestInit = {}): Promise<Answer> => {
    const answer = await fetch(`${address}/api/${path}`, init);
    const said: unknown = answer.status === 204 ? null : await answer.json();
    if (answer.ok) return said as Answer;
    throw new Error((said as { error?: { message?: string } }).error?.message ?? `${path}: ${answer.status}`);
  };
  const post = <Answer>(path: string, body: object, token?: string): Promise<Answer> =>
    asked(path, {
      method: "POST",
      headers: {
        "content-type": "application/json",
        ...(token === undefined ? {} : { authorization: `Bearer ${token}` }),
      },
      body: JSON.stringify(body),
    });
  return {
    get: (path) => asked(path),
    post,
    command: (name, input) => post(`commands/${name}`, { key: randomUUID(), input }),
  };
}
