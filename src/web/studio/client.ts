import type { ErrorAnswer } from "../../studio/api/contract.ts";
import { answering, passphraseAsked } from "./connection.ts";

/** The studio said no, and why. Asking again would bring the same answer. */
export class StudioRefusal extends Error {
  readonly code: string;
  readonly path: string;
  readonly found: string;
  readonly expected: string;

  constructor(error: ErrorAnswer["error"]) {
    super(error.message);
    this.name = "StudioRefusal";
    this.code = error.code;
    this.path = error.path;
    this.found = error.found;
    this.expected = error.expected;
  }
}

/** The studio did not answer, or not now. Asking again later may work. */
export class StudioAway extends Error {
  constructor(message = "The studio does not answer.") {
    super(message);
    this.name = "StudioAway";
  }
}

export interface Question {
  readonly method?: "GET" | "POST" | "DELETE";
  /** Sent as JSON; an empty object where a POST says nothing. */
  readonly body?: unknown;
  /** Sent as it is, under the blob's own type. */
  readonly bytes?: Blob;
  readonly signal?: AbortSignal;
}

const PATIENCE_MS = 20_000;

/**
 * Asks the studio.
 *
 * @param path under /api, such as "/ware"
 * @returns what it answered; undefined where it answered with nothing
 * @throws StudioRefusal where it says no; StudioAway where it does not answer, or wants its passphrase first
 */
export async function ask<Answer>(path: string, question: Question = {}): Promise<Answer> {
  const answer = await askPlainly(path, question);
  if (answer.status === 204) return undefined as Answer;
  try {
    return (await answer.json()) as Answer;
  } catch {
    throw away("The studio broke off in the middle of its answer.");
  }
}

/** The same, for answers that are not JSON. */
export async function askPlainly(path: string, { method, body, bytes, signal }: Question = {}): Promise<Response> {
  let answer: Response;
  try {
    const how = method ?? (body === undefined && bytes === undefined ? "GET" : "POST");
    answer = await fetch(`/api${path}`, {
      method: how,
      // Saying what is sent is also what no page of another site can do unasked.
      headers: how === "POST" ? { "content-type": bytes?.type ?? "application/json" } : {},
      body: how === "POST" ? (bytes ?? JSON.stringify(body ?? {})) : null,
      signal: signal ?? AbortSignal.timeout(PATIENCE_MS),
      cache: "no-store",
    });
  } catch (error) {
    if (signal?.aborted) throw error;
    throw away();
  }
  if (answer.status === 401) {
    passphraseAsked.set(true);
    throw new StudioAway("The studio asks for its passphrase.");
  }
  if (answer.status >= 500 || answer.status === 408 || answer.status === 429) throw away(await reason(answer));
  answering.set(true);
  if (!answer.ok) throw await refusal(answer);
  return answer;
}

function away(message?: string): StudioAway {
  answering.set(false);
  return new StudioAway(message);
}

const reason = async (answer: Response): Promise<string | undefined> => (await errorIn(answer))?.message;

async function refusal(answer: Response): Promise<StudioRefusal> {
  const message = `The studio said no (${answer.status} ${answer.statusText}).`;
  const error = await errorIn(answer);
  return new StudioRefusal(error ?? { code: "refused", path: "", found: "", expected: "", message });
}

async function errorIn(answer: Response): Promise<ErrorAnswer["error"] | undefined> {
  try {
    return ((await answer.json()) as ErrorAnswer).error;
  } catch {
    return undefined;
  }
}
