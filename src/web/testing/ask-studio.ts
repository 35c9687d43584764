import { randomUUID } from "node:crypto";
import type { RecordOf } from "../../studio/records/all-kinds.ts";
import type { KindName } from "../../studio/records/record-kind.ts";

/** A served studio, asked past the browser. */
export interface AskedStudio {
  /** @param more headers, such as a logger's token */
  readonly post: <Answer>(path: string, body: object, more?: Record<string, string>) => Promise<Answer>;
  readonly command: (name: string, input: object) => Promise<unknown>;
  readonly list: <Kind extends KindName>(kind: Kind) => Promise<RecordOf[Kind][]>;
  readonly get: <Kind extends KindName>(kind: Kind, id: string) => Promise<RecordOf[Kind]>;
}

/** @param address such as `http://localhost:7421` */
export function askStudio(address: string): AskedStudio {
  const ask = async <Answer>(path: string, init?: RequestInit): Promise<Answer> => {
    const answer = await fetch(`${address}/api/${path}`, init);
    if (!answer.ok) throw new Error(`${path}: ${await answer.text()}`);
    return (await answer.json()) as Answer;
  };
  const post = <Answer>(path: string, body: object, more: Record<string, string> = {}): Promise<Answer> =>
    ask(path, { method: "POST", headers: { "content-type": "application/json", ...more }, body: JSON.stringify(body) });
  return {
    post,
    command: (name, input) => post(`commands/${name}`, { key: randomUUID(), input }),
    list: (kind) => ask(kind),
    get: (kind, id) => ask(`${kind}/${id}`),
  };
}
