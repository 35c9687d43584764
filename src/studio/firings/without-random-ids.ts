interface Host {
  crypto?: { randomUUID?: (() => string) | undefined };
}

/**
 * Does something with a library that makes ids nobody uses by `crypto.randomUUID`, where there is none: a browser has it
 * only on https or on this very machine, and a phone reaches the studio over the home network by http. Until the work is
 * done, and no longer, an id that is not random stands in.
 *
 * @param work synchronous, so that nobody else can come by an id meanwhile
 */
export function withoutRandomIds<Result>(work: () => Result): Result {
  const host = globalThis as Host;
  const { crypto } = host;
  if (crypto?.randomUUID !== undefined) return work();
  const standIn = { randomUUID: () => "unused" };
  if (crypto === undefined) host.crypto = standIn;
  else Object.defineProperty(crypto, "randomUUID", { value: standIn.randomUUID, configurable: true });
  try {
    return work();
  } finally {
    if (crypto === undefined) delete host.crypto;
    else Reflect.deleteProperty(crypto, "randomUUID");
  }
}
