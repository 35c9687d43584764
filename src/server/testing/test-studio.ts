// Brings the type of `app.swagger()` along.
/// <reference types="@fastify/swagger" />

import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type {} from "@fastify/swagger";
import type { FastifyInstance, InjectOptions, LightMyRequestResponse } from "fastify";
import { openSqliteStore } from "../../store/sqlite-store.ts";
import type { StudioStore } from "../../studio/records/store.ts";
import { LOOPBACK_HOSTS } from "../guarding/own-hosts.ts";
import { hashPassphrase } from "../guarding/passphrase.ts";
import { prepareDataFolder, storeFile } from "../running/data-folder.ts";
import type { ServerSetting } from "../server-setting.ts";
import { studioServer } from "../studio-server.ts";
import { checkAnswer } from "./check-answer.ts";

/** The passphrase of a locked test studio. */
export const PASSPHRASE = "four words of clay";

/** A studio's server over a store in a folder of its own. */
export interface TestStudio {
  readonly app: FastifyInstance;
  readonly store: StudioStore;
  readonly folder: string;
  /** Sends a request; every answer is held against the OpenAPI document. */
  readonly ask: (
    method: "GET" | "POST" | "DELETE",
    path: string,
    more?: Omit<InjectOptions, "method" | "url">,
  ) => Promise<LightMyRequestResponse>;
  /** Faults the server complained of. */
  readonly complaints: Error[];
  /** Moves the clock on. */
  readonly wait: (ms: number) => void;
  readonly end: () => Promise<void>;
}

const JSON_HEADERS = { "content-type": "application/json" };

/** @param locked asks for `PASSPHRASE` */
export async function testStudio(
  wish: { readonly locked?: boolean; readonly more?: Partial<ServerSetting> } = {},
): Promise<TestStudio> {
  const folder = mkdtempSync(join(tmpdir(), "studio-server-"));
  prepareDataFolder(folder);
  const store = await openSqliteStore(storeFile(folder));
  const complaints: Error[] = [];
  const key = Buffer.alloc(32, 7);
  let timeMs = Date.parse("2026-11-25T09:00:00.000Z");
  let ids = 0;
  const app = await studioServer({
    store,
    version: "0.0.0",
    dataFolder: folder,
    webFolder: null,
    key,
    passphrase: wish.locked ? await hashPassphrase(PASSPHRASE, key) : null,
    certificate: null,
    hosts: () => LOOPBACK_HOSTS,
    homeAddresses: () => [],
    now: () => new Date(timeMs++).toISOString(),
    newId: () => `id-${++ids}`,
    complain: (error) => complaints.push(error),
    ...wish.more,
  });
  return {
    app,
    store,
    folder,
    complaints,
    ask: async (method, path, more = {}) => {
      const headers = method === "POST" ? { ...JSON_HEADERS, ...more.headers } : (more.headers ?? {});
      const answer = await app.inject({ ...more, method, url: `/api${path}`, headers });
      checkAnswer(app.swagger(), method, `/api${path}`, answer);
      return answer;
    },
    wait: (ms) => {
      timeMs += ms;
    },
    end: async () => {
      await app.close();
      await store.close();
      rmSync(folder, { recursive: true, force: true });
    },
  };
}
