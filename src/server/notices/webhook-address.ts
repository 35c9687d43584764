import { lookup } from "node:dns/promises";
import { BlockList, isIP } from "node:net";
import { BadInput } from "../../measures/bad-input.ts";

// The home network (RFC 1918, RFC 4193) and this machine (RFC 1122, 3.2.1.3; RFC 4291, 2.5.3).
const HOME = new BlockList();
for (const [net, prefix] of [
  ["10.0.0.0", 8],
  ["172.16.0.0", 12],
  ["192.168.0.0", 16],
  ["127.0.0.0", 8],
] as const) {
  HOME.addSubnet(net, prefix, "ipv4");
}
HOME.addAddress("::1", "ipv6");
HOME.addSubnet("fc00::", 7, "ipv6");

// Where nobody's own program listens: this network, link-local (cloud machines tell their secrets there), multicast
// (RFC 6890).
const NOWHERE = new BlockList();
for (const [net, prefix] of [
  ["0.0.0.0", 8],
  ["169.254.0.0", 16],
  ["224.0.0.0", 3],
] as const) {
  NOWHERE.addSubnet(net, prefix, "ipv4");
}
NOWHERE.addAddress("::", "ipv6");
NOWHERE.addSubnet("fe80::", 10, "ipv6");
NOWHERE.addSubnet("ff00::", 8, "ipv6");

/** Where a webhook goes: the address that was looked at is the one that is spoken to, whatever its name says later. */
export interface WebhookPlace {
  readonly url: URL;
  readonly address: string;
  readonly family: 4 | 6;
}

/**
 * Finds where a webhook goes: any https address, or a plain one of the home network.
 *
 * @throws BadInput where it may not go there, or nobody knows the name
 */
export async function webhookPlace(text: string): Promise<WebhookPlace> {
  const url = URL.canParse(text) ? new URL(text) : null;
  if (url === null || (url.protocol !== "https:" && url.protocol !== "http:")) throw refused(text, "no web address");
  const host = url.hostname.replace(/^\[|\]$/g, "");
  const { address, family } = await addressOf(host);
  const kind = family === 6 ? "ipv6" : "ipv4";
  // Written as IPv6, an IPv4 address is still what it is (RFC 4291, 2.5.5.2); the lists tell it.
  if (NOWHERE.check(address, kind)) throw refused(host, `${address}, where no program of yours listens`);
  if (url.protocol === "http:" && !HOME.check(address, kind)) {
    throw refused(host, `${address}, which is not in your home network, without encryption`);
  }
  return { url, address, family };
}

async function addressOf(host: string): Promise<{ address: string; family: 4 | 6 }> {
  const family = isIP(host);
  if (family === 4 || family === 6) return { address: host, family };
  try {
    const found = await lookup(host);
    return { address: found.address, family: found.family === 6 ? 6 : 4 };
  } catch {
    throw refused(host, "a name that nobody knows");
  }
}

const refused = (path: string, found: string): BadInput =>
  new BadInput({
    code: "wrong-webhook",
    path: path.slice(0, 100),
    found,
    expected: "an https address, or an http address of your home network",
  });
