/**
 * A short mark of a plain value: the same for the same value, another (but for one chance in four thousand million) for
 * another. FNV-1a of its JSON, 32 bits (offset basis and prime: RFC 9923 §6, from memory).
 */
export function fingerprint(value: unknown): string {
  const text = JSON.stringify(value) ?? "";
  let hash = 0x811c9dc5;
  for (let i = 0; i < text.length; i++) hash = Math.imul(hash ^ text.charCodeAt(i), 0x01000193);
  return (hash >>> 0).toString(36);
}
