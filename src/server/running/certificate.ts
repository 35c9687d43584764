import { X509Certificate } from "node:crypto";
import { createSecureContext } from "node:tls";
import { BadInput } from "../../measures/bad-input.ts";

/** A certificate and its private key, both PEM. */
export interface Certificate {
  readonly cert: string;
  readonly key: string;
}

/** @throws BadInput where they are no certificate and key, or not of one pair */
export function checkCertificate(certificate: Certificate): void {
  try {
    createSecureContext(certificate);
  } catch (error) {
    throw new BadInput({
      code: "wrong-certificate",
      path: "--certificate",
      found: `files that are no such pair (${error instanceof Error ? error.message : String(error)})`,
      expected: "a certificate and the private key that belongs to it, both PEM",
    });
  }
}

/** The names a certificate is for, as they stand in a Host header: the server answers to them too. */
export function certificateHosts({ cert }: Certificate): string[] {
  const names = new X509Certificate(cert).subjectAltName ?? "";
  return [...names.matchAll(/(?:^|, )DNS:([a-z0-9.-]+)/gi)].map(([, name]) => (name as string).toLowerCase());
}
