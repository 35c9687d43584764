import { randomUUID } from "node:crypto";
import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import type { FastifyInstance } from "fastify";
import { BadInput } from "../../measures/bad-input.ts";
import { openStore } from "../../store/open-store.ts";
import { LOOPBACK_HOSTS } from "../guarding/own-hosts.ts";
import { hashPassphrase } from "../guarding/passphrase.ts";
import type { MqttWish } from "../readings/mqtt-message.ts";
import { studioServer } from "../studio-server.ts";
import { type Certificate, certificateHosts, checkCertificate } from "./certificate.ts";
import { keepDailyBackups } from "./daily-backup.ts";
import { prepareDataFolder, serverKey, storeFile } from "./data-folder.ts";
import { homeNetworkAddresses, ownHosts } from "./own-addresses.ts";

/** How a studio is to be served. */
export interface RunWish {
  readonly port: number;
  readonly dataFolder: string;
  /** A PostgreSQL connection string; the folder's own SQLite file where null. */
  readonly storePlace: string | null;
  /** Whether other machines of the home network may reach it; then a passphrase is needed. */
  readonly homeNetwork: boolean;
  readonly passphrase: string | null;
  /** Encrypts the connection; null for plain HTTP. */
  readonly certificate: Certificate | null;
  /** A broker to listen to temperatures at. */
  readonly mqtt?: MqttWish | null;
  /** The studio's clock, ISO 8601, and how fast it runs; the world's where left out. A rehearsal has one of its own. */
  readonly now?: () => string;
  readonly pace?: number;
  readonly complain: (error: Error) => void;
  /** Told what she should know while it runs, in words. */
  readonly say?: (words: string) => void;
}

/** A server that runs. */
export interface RunningServer {
  /** Where this machine's own browser finds it. */
  readonly address: string;
  /** Where a phone of the home network does. */
  readonly homeAddresses: readonly string[];
  /** Lets requests end, stops planning, lets go of the store. */
  readonly stop: () => Promise<void>;
}

const packageFile = (path: string): string => fileURLToPath(new URL(`../../../${path}`, import.meta.url));

/**
 * Opens the store and serves it.
 *
 * @throws BadInput where the port is taken, the folder cannot be written, the passphrase is missing or too short
 */
export async function runServer(wish: RunWish): Promise<RunningServer> {
  const { homeNetwork, dataFolder, certificate, complain } = wish;
  const scheme = certificate === null ? "http" : "https";
  if (homeNetwork && wish.passphrase === null) throw noPassphrase();
  if (certificate !== null) checkCertificate(certificate);
  prepareDataFolder(dataFolder);
  const key = serverKey(dataFolder);
  const passphrase = wish.passphrase === null ? null : await hashPassphrase(wish.passphrase, key);
  const place = wish.storePlace ?? storeFile(dataFolder);
  const store = await openStore(place);
  const now = wish.now ?? ((): string => new Date().toISOString());
  let port = wish.port;
  const homeAddresses = (): string[] =>
    homeNetwork ? homeNetworkAddresses().map((host) => `${scheme}://${host}:${port}`) : [];
  try {
    const app = await studioServer({
      store,
      version: JSON.parse(readFileSync(packageFile("package.json"), "utf8")).version,
      dataFolder,
      webFolder: packageFile("dist/web"),
      key,
      passphrase,
      certificate,
      hosts: () => [
        ...LOOPBACK_HOSTS,
        ...(homeNetwork ? ownHosts() : []),
        ...(certificate === null ? [] : certificateHosts(certificate)),
      ],
      homeAddresses,
      now,
      newId: () => randomUUID(),
      complain,
      mqtt: wish.mqtt ?? null,
      ...(wish.pace === undefined ? {} : { pace: wish.pace }),
      ...(wish.say === undefined ? {} : { say: wish.say }),
    });
    await listen(app, port, homeNetwork ? "0.0.0.0" : "127.0.0.1");
    port = (app.server.address() as { port: number }).port;
    const backups = keepDailyBackups(store, place, dataFolder, now, complain);
    return {
      address: `${scheme}://localhost:${port}`,
      homeAddresses: homeAddresses(),
      stop: async () => {
        await app.close();
        await backups.stop();
        await store.close();
      },
    };
  } catch (error) {
    await store.close();
    throw error;
  }
}

async function listen(app: FastifyInstance, port: number, host: string): Promise<void> {
  try {
    await app.listen({ port, host });
  } catch (error) {
    await app.close();
    const { code } = error as NodeJS.ErrnoException;
    const why = { EADDRINUSE: "which is in use already", EACCES: "which only the system may use" }[code ?? ""];
    if (why === undefined) throw error;
    throw new BadInput({
      code: "port-taken",
      path: "--port",
      found: `port ${port}, ${why}`,
      expected: `another, such as --port ${port + 1}; if Wareboard runs already, open http://localhost:${port} instead`,
    });
  }
}

const noPassphrase = (): BadInput =>
  new BadInput({
    code: "missing-option",
    path: "--home-network",
    found: "no passphrase",
    expected:
      "one of 12 characters or more, so that only your household gets in: put it in a file and give --passphrase-file FILE, or in the variable WAREBOARD_PASSPHRASE",
  });
