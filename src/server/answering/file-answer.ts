import type { FastifyReply } from "fastify";

/** A name that every system takes for a file: letters, digits, spaces, dashes. */
export function cleanFileName(name: string, otherwise: string): string {
  const clean = name
    .normalize("NFC")
    .replaceAll(/[^\p{L}\p{N} _-]+/gu, " ")
    .replaceAll(/\s+/g, " ")
    .trim()
    .slice(0, 80)
    .trim();
  return clean === "" ? otherwise : clean;
}

/**
 * Names the file an answer is (RFC 6266): a plain name for old programs, the whole one for all others.
 *
 * @param how `inline` to show it, `attachment` to save it
 */
export function nameFile(reply: FastifyReply, how: "inline" | "attachment", name: string): void {
  const plain = name
    .normalize("NFKD")
    .replaceAll(/[^\x20-\x7e]/g, "")
    .replaceAll(/["\\%]/g, "");
  const whole = encodeURIComponent(name).replaceAll(/['()*]/g, (sign) => `%${sign.charCodeAt(0).toString(16)}`);
  reply.header("content-disposition", `${how}; filename="${plain}"; filename*=UTF-8''${whole}`);
}

/** Bytes as the framework sends them, without a copy. */
export const asBuffer = (bytes: Uint8Array): Buffer => Buffer.from(bytes.buffer, bytes.byteOffset, bytes.byteLength);
