const LOOPBACK = new Set(["127.0.0.1", "::1", "::ffff:127.0.0.1"]);

/** Whether an address a request came from is this machine itself. */
export const isThisMachine = (address: string): boolean => LOOPBACK.has(address);
