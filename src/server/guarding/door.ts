import type { FastifyInstance, FastifyReply, FastifyRequest } from "fastify";
import { Refusal } from "../answering/refusals.ts";
import type { ServerSetting } from "../server-setting.ts";
import { Attempts } from "./attempts.ts";
import { carriesToken } from "./own-token.ts";
import { SESSION_COOKIE, SESSION_DAYS, Sessions } from "./sessions.ts";

/** The page that asks for the passphrase and what it is made of are no secret; the studio's own data is. */
const ALWAYS_OPEN = new Set(["/api/session"]);

/** Lets in who has given the passphrase; where none is asked, everybody. */
export class Door {
  readonly #setting: Pick<ServerSetting, "passphrase" | "certificate" | "now">;
  readonly #sessions: Sessions | null;
  readonly #attempts = new Attempts();
  /** One hash at a time: each takes 128 MB. */
  #turn: Promise<unknown> = Promise.resolve();

  constructor(setting: Pick<ServerSetting, "passphrase" | "certificate" | "key" | "now">) {
    this.#setting = setting;
    this.#sessions = setting.passphrase ? new Sessions(setting.key, setting.passphrase) : null;
  }

  get isLocked(): boolean {
    return this.#sessions !== null;
  }

  isOpenFor(request: FastifyRequest): boolean {
    return this.#sessions === null || this.#sessions.isOpen(request.cookies[SESSION_COOKIE], this.#nowMs());
  }

  /** Refuses requests to /api of who has not given the passphrase. */
  guard(app: FastifyInstance): void {
    app.addHook("onRequest", async (request) => {
      if (this.isOpenFor(request) || ALWAYS_OPEN.has(request.routeOptions.url ?? "") || carriesToken(request)) return;
      throw new Refusal(401, {
        code: "passphrase-asked",
        path: "",
        found: "a browser that has not given the passphrase",
        expected: "the passphrase first, at /api/session",
      });
    });
  }

  /** Tries the words. Gives 0 where they are right, "wrong", or how long this address has to wait, in milliseconds. */
  async open(request: FastifyRequest, reply: FastifyReply, words: string): Promise<number | "wrong"> {
    const { passphrase } = this.#setting;
    if (!passphrase || !this.#sessions) return 0;
    const waitMs = this.#attempts.waitMs(request.ip, this.#nowMs());
    if (waitMs > 0) return waitMs;
    this.#attempts.tried(request.ip, this.#nowMs());
    const answer = this.#turn.then(() => passphrase.matches(words));
    this.#turn = answer.catch(() => {});
    if (!(await answer)) return "wrong";
    this.#attempts.succeeded(request.ip);
    reply.setCookie(SESSION_COOKIE, this.#sessions.begin(this.#nowMs()), {
      path: "/",
      httpOnly: true,
      sameSite: "strict",
      secure: this.#setting.certificate !== null,
      maxAge: SESSION_DAYS * 24 * 60 * 60,
    });
    return 0;
  }

  close(request: FastifyRequest, reply: FastifyReply): void {
    this.#sessions?.end(request.cookies[SESSION_COOKIE], this.#nowMs());
    reply.clearCookie(SESSION_COOKIE, { path: "/" });
  }

  #nowMs(): number {
    return Date.parse(this.#setting.now());
  }
}
