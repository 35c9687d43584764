import type { NoticeTrial, StudioNotice } from "../../studio/api/notices-contract.ts";
import type { NoticeWishes } from "../../studio/records/studio-settings.ts";
import { readMail } from "./mail-file.ts";
import { letterOf, noticeContent } from "./notice-words.ts";
import { sendMail } from "./send-mail.ts";
import { sendWebhook } from "./send-webhook.ts";
import { threeTries } from "./three-tries.ts";

/** Until she has chosen, open browsers show notices and nothing leaves this machine. */
export const FIRST_WISHES: NoticeWishes = { browser: true, email: "", webhook: "" };

/** What sending needs of the server. */
export interface SenderSetting {
  readonly dataFolder: string;
  readonly wishes: () => Promise<NoticeWishes>;
  /** Tells every open browser. */
  readonly toBrowsers: (notice: StudioNotice) => void;
  /** Told in words where one could not be sent. */
  readonly say: (words: string) => void;
  readonly pausesMs?: readonly number[];
}

/** Sends notices by the ways she has chosen, each by itself: one that fails holds up no other. */
export class NoticeSender {
  readonly #setting: SenderSetting;
  readonly #sending = new Set<Promise<void>>();
  readonly #stopped = new AbortController();

  constructor(setting: SenderSetting) {
    this.#setting = setting;
  }

  /** Begins to send; comes back at once. */
  send(notice: StudioNotice): void {
    const sending = this.#send(notice).finally(() => this.#sending.delete(sending));
    this.#sending.add(sending);
  }

  /** Sends one by each way that is set, once, and tells how it went. */
  async try(notice: StudioNotice): Promise<NoticeTrial> {
    const { email, webhook } = await this.#setting.wishes();
    const outcome = async (address: string, send: () => Promise<void>): Promise<string> =>
      address === ""
        ? "not set"
        : send().then(
            () => "sent",
            (error: Error) => error.message,
          );
    return {
      email: await outcome(email, () => this.#byMail(email, notice)),
      webhook: await outcome(webhook, () => sendWebhook(webhook, noticeContent(notice))),
    };
  }

  /** Tries no more; comes back when nothing is under way. */
  async close(): Promise<void> {
    this.#stopped.abort();
    await Promise.all(this.#sending);
  }

  async #send(notice: StudioNotice): Promise<void> {
    const { say, pausesMs } = this.#setting;
    const tried = async (way: string, send: () => Promise<void>): Promise<void> => {
      try {
        await threeTries(send, (ms) => this.#pause(ms), pausesMs);
      } catch (error) {
        say(
          `A notice (${notice.kind}, ${notice.firingName}) could not be sent by ${way}: ${(error as Error).message}.`,
        );
      }
    };
    try {
      const { browser, email, webhook } = await this.#setting.wishes();
      if (browser) this.#setting.toBrowsers(notice);
      await Promise.all([
        email === "" ? null : tried("e-mail", () => this.#byMail(email, notice)),
        webhook === "" ? null : tried("webhook", () => sendWebhook(webhook, noticeContent(notice))),
      ]);
    } catch (error) {
      say(`A notice (${notice.kind}, ${notice.firingName}) could not be sent: ${(error as Error).message}.`);
    }
  }

  async #byMail(to: string, notice: StudioNotice): Promise<void> {
    const mail = readMail(this.#setting.dataFolder);
    if (mail === null) throw new Error("no mail server is set");
    const { subject, text } = letterOf(notice);
    await sendMail(mail, to, subject, text);
  }

  #pause(ms: number): Promise<void> {
    const { signal } = this.#stopped;
    return new Promise((resolve, reject) => {
      const stop = (): void => reject(new Error("the server stops"));
      if (signal.aborted) return stop();
      const timer = setTimeout(() => {
        signal.removeEventListener("abort", stop);
        resolve();
      }, ms);
      signal.addEventListener("abort", () => {
        clearTimeout(timer);
        stop();
      });
    });
  }
}
