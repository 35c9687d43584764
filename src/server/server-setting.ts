import type { StudioStore } from "../studio/records/store.ts";
import type { Passphrase } from "./guarding/passphrase.ts";
import type { MqttWish } from "./readings/mqtt-message.ts";
import type { Certificate } from "./running/certificate.ts";

/** What a server of one studio is made with. */
export interface ServerSetting {
  readonly store: StudioStore;
  readonly version: string;
  /** Where backups are kept and uploads come in. */
  readonly dataFolder: string;
  /** The built application, or null to answer /api alone. */
  readonly webFolder: string | null;
  /** The server's own random key, 32 bytes. */
  readonly key: Buffer;
  /** Asked of everybody where it is set. */
  readonly passphrase: Passphrase | null;
  /** Encrypts the connection; null for plain HTTP. */
  readonly certificate: Certificate | null;
  /** Host names and addresses the server answers to, without ports. Asked at each request: addresses change. */
  readonly hosts: () => readonly string[];
  /** Addresses to open on a phone, such as `http://192.168.1.20:7420`. */
  readonly homeAddresses: () => readonly string[];
  /** The moment, ISO 8601 in UTC to the millisecond. */
  readonly now: () => string;
  readonly newId: () => string;
  /** Faults of Wareboard's own are written here. */
  readonly complain: (error: Error) => void;
  /** A broker to listen to temperatures at; none where left out. */
  readonly mqtt?: MqttWish | null;
  /** What she should know, in words: a broker is away, a notice could not be sent. Nobody is told where left out. */
  readonly say?: (words: string) => void;
  /** How fast the studio's clock runs: 1 where left out; a rehearsal's runs faster. */
  readonly pace?: number;
  /** The hour of the day in the studio, 0 to 23; by this machine's clock where left out. */
  readonly hourOf?: (ms: number) => number;
}
