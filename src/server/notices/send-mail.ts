import { createTransport } from "nodemailer";
import type { Mail } from "./mail-file.ts";
import { NotSent } from "./send-webhook.ts";

const LONGEST_MS = 15_000;
/** All of the line encrypted from the start (RFC 8314, 3.3); any other port begins plain and asks for TLS. */
const ENCRYPTED_PORT = 465;
const LOOPBACK = /^(localhost|127\.|::1$)/;

/**
 * Sends one message in plain text.
 *
 * @throws NotSent where the mail server did not take it
 */
export async function sendMail(mail: Mail, to: string, subject: string, text: string): Promise<void> {
  const transport = createTransport({
    host: mail.host,
    port: mail.port,
    secure: mail.port === ENCRYPTED_PORT,
    // A password goes over no line that others can read; on this machine itself there are no others.
    requireTLS: mail.user !== "" && !LOOPBACK.test(mail.host),
    ...(mail.user === "" ? {} : { auth: { user: mail.user, pass: mail.password } }),
    connectionTimeout: LONGEST_MS,
    greetingTimeout: LONGEST_MS,
    socketTimeout: LONGEST_MS,
    disableFileAccess: true,
    disableUrlAccess: true,
  });
  try {
    await transport.sendMail({
      from: { name: "Wareboard", address: mail.from },
      to: { name: "", address: to },
      subject,
      text,
    });
  } catch (error) {
    const { responseCode, message } = error as Error & { responseCode?: number };
    // 5yz: never (RFC 5321, 4.2.1). Anything else may pass.
    throw new NotSent(message, responseCode === undefined || responseCode < 500);
  } finally {
    transport.close();
  }
}
