import { afterAll, beforeAll, expect, test } from "vitest";
import { type TestStudio, testStudio } from "../testing/test-studio.ts";

let studio: TestStudio;
beforeAll(async () => {
  studio = await testStudio();
});
afterAll(() => studio.end());

const set = (mail: object) => studio.ask("POST", "/mail", { payload: JSON.stringify(mail) });

test("the mail server is set, shown without its password, and forgotten; the password goes to no other server", async () => {
  const empty = { host: "", port: 587, user: "", from: "", hasPassword: false };
  expect((await studio.ask("GET", "/mail")).json()).toEqual(empty);
  const mail = { host: "mail.example.org", port: 465, user: "kiln", from: "kiln@example.org" };
  const card = { ...mail, hasPassword: true };
  expect((await set({ ...mail, password: "a secret" })).json()).toEqual(card);
  expect((await set({ ...mail, port: 587 })).json()).toEqual({ ...card, port: 587 });
  expect((await studio.ask("GET", "/mail")).body).not.toContain("a secret");
  expect((await set({ ...mail, host: "mail.example.net" })).json().hasPassword).toBe(false);
  expect((await set({ ...mail, host: "mail example" })).json().error).toMatchObject({
    code: "wrong-mail",
    path: "host",
  });
  expect((await studio.ask("DELETE", "/mail")).statusCode).toBe(204);
  expect((await studio.ask("GET", "/mail")).json()).toEqual(empty);
});

test("a trial tells of each way whether it arrives", async () => {
  const notices = { browser: true, email: "potter@example.org", webhook: "http://203.0.113.5/x" };
  const call = JSON.stringify({ key: "k", input: { notices } });
  expect((await studio.ask("POST", "/commands/change-settings", { payload: call })).statusCode).toBe(200);
  expect((await studio.ask("POST", "/notices/try")).json()).toEqual({
    email: "no mail server is set",
    webhook: expect.stringContaining("not in your home network"),
  });
});
