import { chmodSync, mkdtempSync, rmSync, statSync, writeFileSync } from "node:fs";
import { createServer, type Server } from "node:http";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { SMTPServer } from "smtp-server";
import { afterAll, beforeAll, beforeEach, describe, expect, test } from "vitest";
import { BadInput } from "../../measures/bad-input.ts";
import type { StudioNotice } from "../../studio/api/notices-contract.ts";
import { type Mail, readMail, writeMail } from "./mail-file.ts";
import { NoticeSender } from "./notice-sender.ts";
import { sendWebhook } from "./send-webhook.ts";
import { webhookPlace } from "./webhook-address.ts";

/** The machine may be busy with other tests. */
const PATIENCE = { timeout: 30_000 };
const NOTICE: StudioNotice = {
  ...{ id: "n1", firingId: "f1", firingName: "glaze\r\nBcc: everybody@example.org", kind: "overshoot" },
  ...{ since: "2026-11-25T09:00:00.000Z", until: null, message: "It reads 40 °C more than asked.", isDanger: true },
};
const folder = mkdtempSync(join(tmpdir(), "studio-notices-"));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const portOf = (server: { address(): unknown }): number => (server.address() as { port: number }).port;
const sender = (wishes: { email?: string; webhook?: string; browser?: boolean }, said: string[] = []) => {
  const shown: StudioNotice[] = [];
  const made = new NoticeSender({
    dataFolder: folder,
    wishes: async () => ({ browser: false, email: "", webhook: "", ...wishes }),
    toBrowsers: (notice) => shown.push(notice),
    say: (words) => said.push(words),
    pausesMs: [5, 20],
  });
  return { made, shown, said };
};

describe("by e-mail", () => {
  let server: SMTPServer;
  let letters: { from: string; to: string[]; text: string }[];
  let fails: number;
  let mail: Mail;
  beforeAll(async () => {
    server = new SMTPServer({
      disabledCommands: ["STARTTLS"],
      allowInsecureAuth: true,
      onAuth: ({ username, password }, _session, done) =>
        username === "kiln" && password === "a secret"
          ? done(null, { user: username })
          : done(new Error("wrong password")),
      onData: (stream, session, done) => {
        let text = "";
        stream.on("data", (part) => {
          text += part;
        });
        stream.on("end", () => {
          if (fails-- > 0) return done(Object.assign(new Error("come back later"), { responseCode: 451 }));
          const { mailFrom, rcptTo } = session.envelope;
          letters.push({ from: mailFrom ? mailFrom.address : "", to: rcptTo.map(({ address }) => address), text });
          done();
        });
      },
    });
    await new Promise<void>((resolve) => server.listen(0, "127.0.0.1", resolve));
    mail = {
      ...{ host: "127.0.0.1", port: portOf(server.server), user: "kiln", password: "a secret" },
      from: "kiln@example.org",
    };
  });
  beforeEach(() => {
    [letters, fails] = [[], 0];
    writeMail(folder, mail);
  });
  afterAll(() => new Promise<void>((resolve) => server.close(resolve)));

  test("a letter comes from the set address to hers, and no name of a firing adds to its head", async () => {
    const { made } = sender({ email: "potter@example.org" });
    expect(await made.try(NOTICE)).toEqual({ email: "sent", webhook: "not set" });
    expect(letters).toHaveLength(1);
    const [{ from, to, text }] = letters as [(typeof letters)[0]];
    expect([from, to]).toEqual(["kiln@example.org", ["potter@example.org"]]);
    expect(text).toMatch(/^Subject: Look at the kiln: overshoot, glaze Bcc: everybody@example.org\r$/m);
    expect(text.split("\r\n\r\n")[0]).not.toMatch(/^Bcc:/m);
    expect(text.replaceAll("=\r\n", "")).toContain("never switches a kiln");
  });

  test("a mail server that has no time is tried three times in all; a wrong password is told of", async () => {
    fails = 2;
    const patient = sender({ email: "potter@example.org" });
    patient.made.send(NOTICE);
    await expect.poll(() => letters.length, PATIENCE).toBe(1);
    fails = 3;
    patient.made.send(NOTICE);
    await expect.poll(() => patient.said, PATIENCE).toEqual([expect.stringContaining("by e-mail")]);
    expect(letters).toHaveLength(1);
    fails = 0;
    writeMail(folder, { ...mail, password: "another" });
    expect((await patient.made.try(NOTICE)).email).toMatch(/wrong password/i);
    await patient.made.close();
  });

  test("the password's file is hers alone, or it is not used", () => {
    expect(statSync(join(folder, "mail.json")).mode & 0o777).toBe(0o600);
    chmodSync(join(folder, "mail.json"), 0o644);
    expect(() => readMail(folder)).toThrow(expect.objectContaining({ code: "open-password" }));
    chmodSync(join(folder, "mail.json"), 0o600);
    writeFileSync(join(folder, "mail.json"), '{"host":"x"}');
    expect(() => readMail(folder)).toThrow(expect.objectContaining({ code: "missing-field" }));
    expect(() => writeMail(folder, { ...mail, from: "a@b>,c@d" })).toThrow(BadInput);
  });
});

describe("by webhook", () => {
  let server: Server;
  let url: string;
  let heard: { type: string | undefined; body: string }[];
  let answersWith: number[];
  beforeAll(async () => {
    server = createServer((request, answer) => {
      let body = "";
      request.on("data", (part) => {
        body += part;
      });
      request.on("end", () => {
        heard.push({ type: request.headers["content-type"], body });
        const status = answersWith.shift() ?? 204;
        if (status === 0) return; // never
        answer.writeHead(status, { location: "/elsewhere" }).end();
      });
    });
    await new Promise<void>((resolve) => server.listen(0, "127.0.0.1", resolve));
    url = `http://127.0.0.1:${portOf(server)}/kiln`;
  });
  beforeEach(() => {
    [heard, answersWith] = [[], []];
  });
  afterAll(() => {
    server.closeAllConnections();
    server.close();
  });

  test("the notice is posted as JSON", async () => {
    const { made } = sender({ webhook: url });
    expect((await made.try(NOTICE)).webhook).toBe("sent");
    expect(heard[0]?.type).toBe("application/json");
    expect(JSON.parse(heard[0]?.body ?? "")).toMatchObject({ format: "notice/1", ...NOTICE });
  });

  test("a server that fails is tried three times in all, one that refuses once", async () => {
    answersWith = [500, 503, 200];
    const { made, said } = sender({ webhook: url });
    made.send(NOTICE);
    await expect.poll(() => heard.length, PATIENCE).toBe(3);
    answersWith = [410];
    made.send(NOTICE);
    await expect.poll(() => said.length, PATIENCE).toBe(1);
    expect([heard.length, said[0]]).toEqual([4, expect.stringContaining("it answered 410")]);
    await made.close();
  });

  test("no redirect is followed, and none is waited for without end", async () => {
    answersWith = [302, 0];
    await expect(sendWebhook(url, {})).rejects.toThrow("not followed");
    expect(heard).toHaveLength(1);
    await expect(sendWebhook(url, {}, 50)).rejects.toThrow("did not answer in time");
  });

  test("goes to an https address or one of the home network, and nowhere else", async () => {
    // Addresses for documentation: RFC 5737, RFC 3849.
    const may = [
      "http://10.1.2.3/x",
      "http://192.168.1.9:8123",
      "http://[::1]/",
      "http://[fd00::1]/",
      "https://203.0.113.5/x",
    ];
    for (const each of may) expect((await webhookPlace(each)).url.href).toBe(new URL(each).href);
    const mayNot = [
      "http://203.0.113.5/x",
      "http://[2001:db8::1]/",
      "https://169.254.169.254/latest",
      "http://[::ffff:169.254.169.254]/",
      "https://[::ffff:a9fe:a9fe]/",
      "http://2852039166/",
      "http://0.0.0.0/",
      "https://[fe80::1]/",
      "ftp://10.1.2.3/",
      "file:///etc/passwd",
      "https://no-such-name.invalid/",
      "nonsense",
    ];
    for (const each of mayNot) await expect(webhookPlace(each), each).rejects.toThrow(BadInput);
  });
});

test("open browsers are told where she wishes it, whatever becomes of the rest", async () => {
  const { made, shown, said } = sender({ browser: true, webhook: "http://203.0.113.5/x" });
  made.send(NOTICE);
  await expect.poll(() => said.length, PATIENCE).toBe(1);
  expect(shown).toEqual([NOTICE]);
  await made.close();
});
