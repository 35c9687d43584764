import { hostname, networkInterfaces } from "node:os";

/** This machine's addresses on the home network, the likeliest first: IPv4, private (RFC 1918). */
export function homeNetworkAddresses(interfaces = networkInterfaces()): string[] {
  const addresses = Object.values(interfaces)
    .flatMap((each) => each ?? [])
    .filter(({ internal, family }) => !internal && family === "IPv4")
    .map(({ address }) => address);
  return [...new Set(addresses)].sort((a, b) => Number(isPrivate(b)) - Number(isPrivate(a)));
}

/** Every name and address by which others may reach this machine, as they stand in a Host header. */
export function ownHosts(interfaces = networkInterfaces(), name = hostname()): string[] {
  const addresses = Object.values(interfaces)
    .flatMap((each) => each ?? [])
    .filter(({ internal }) => !internal)
    .map(({ address, family }) => (family === "IPv6" ? `[${address}]` : address));
  const names = /^[a-z0-9.-]+$/i.test(name) ? [name, `${name}.local`] : [];
  return [...new Set([...names, ...addresses].map((each) => each.toLowerCase()))];
}

const isPrivate = (address: string): boolean => /^(192\.168\.|10\.|172\.(1[6-9]|2\d|3[01])\.)/.test(address);
