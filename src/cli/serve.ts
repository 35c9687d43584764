import { resolve } from "node:path";
import { renderUnicodeCompact } from "uqr";
import { BadInput } from "../measures/bad-input.ts";
import { usualDataFolder } from "../server/running/data-folder.ts";
import { canOpenBrowser, openBrowser } from "../server/running/open-browser.ts";
import type { RunningServer } from "../server/running/run-server.ts";
import { type Command, type CommandCall, type ExitCode, printJson, printLines } from "./command.ts";
import { readTextFile } from "./files.ts";
import { mqttOption } from "./mqtt-option.ts";
import { numberOption } from "./options.ts";

const USUAL_PORT = 7420;

/** `wareboard serve`: the studio, in her browser. */
export const serve: Command = {
  name: "serve",
  words: [],
  summary: "Open your studio in the browser, kept on this machine; with --home-network on your phone too.",
  options: {
    port: { type: "string" },
    data: { type: "string" },
    "home-network": { type: "boolean" },
    "passphrase-file": { type: "string" },
    certificate: { type: "string" },
    "certificate-key": { type: "string" },
    store: { type: "string" },
    mqtt: { type: "string" },
    "mqtt-topic": { type: "string" },
    "mqtt-unit": { type: "string" },
    "no-open": { type: "boolean" },
  },
  optionHelp: {
    port: `where to listen (${USUAL_PORT})`,
    data: "the folder that holds the studio and its backups (wareboard-studio in your own folder, or in XDG_DATA_HOME)",
    "home-network": "let phones and others in your home network reach it; asks everybody for the passphrase",
    "passphrase-file": "a file that holds the passphrase, of 12 characters or more; or set WAREBOARD_PASSPHRASE",
    certificate: "a certificate (PEM) for this machine, to encrypt the connection; a phone then works offline too",
    "certificate-key": "the certificate's private key (PEM)",
    store: "keep the records in this PostgreSQL database (postgres://…) instead of a file",
    mqtt: "listen to temperatures at this MQTT broker (mqtt://host:1883, or mqtts://…; its name and password before an @; or set WAREBOARD_MQTT)",
    "mqtt-topic":
      "the topic they come on: TOPIC/NAME of a logger added under Kilns, or a topic with + for the name (studio/kiln)",
    "mqtt-unit": "the unit of a bare number there, C or F (C)",
    "no-open": "do not open the browser",
  },
  examples: [
    "wareboard serve",
    "wareboard serve --port 8000 --data ~/pots",
    "wareboard serve --home-network --passphrase-file passphrase.txt",
    "wareboard serve --mqtt mqtt://localhost --mqtt-topic studio/kiln",
  ],
  run: async (call): Promise<ExitCode> => {
    // Whatever is written from here on is hers alone to read.
    process.umask(0o077);
    // Only here: no other command should wait for the whole server to be read.
    const { runServer } = await import("../server/running/run-server.ts");
    const folder = call.options.data;
    const dataFolder = typeof folder === "string" ? resolve(folder) : usualDataFolder();
    const running = await runServer({
      port: numberOption(call, "port", { least: 0, most: 65535, whole: true, otherwise: USUAL_PORT }),
      dataFolder,
      storePlace: storeOption(call),
      homeNetwork: call.options["home-network"] === true,
      passphrase: passphraseOption(call),
      certificate: certificateOption(call),
      mqtt: mqttOption(call),
      say: (words) => process.stderr.write(`  ${words}\n`),
      complain: (error) => process.stderr.write(`${error.stack ?? error.message}\n`),
    });
    if (call.json) printJson({ address: running.address, homeAddresses: running.homeAddresses, dataFolder });
    else printLines(welcome(running, dataFolder));
    if (call.options["no-open"] !== true && canOpenBrowser(process.env, process.platform)) openBrowser(running.address);
    await stopAsked();
    if (!call.json) printLines(["", "  Stopping. Everything is kept."]);
    await running.stop();
    return 0;
  },
};

function storeOption(call: CommandCall): string | null {
  const { store } = call.options;
  if (store === undefined) return null;
  if (typeof store === "string" && /^postgres(ql)?:\/\//.test(store)) return store;
  throw new BadInput({
    code: "wrong-option",
    path: "--store",
    found: "a place that is no PostgreSQL connection string",
    expected: "postgres://…, or --data FOLDER for a folder of this machine",
  });
}

function passphraseOption(call: CommandCall): string | null {
  const file = call.options["passphrase-file"];
  const words = typeof file === "string" ? readTextFile(file) : process.env.WAREBOARD_PASSPHRASE;
  // It is hashed at once; no program started from here should find it.
  delete process.env.WAREBOARD_PASSPHRASE;
  return words === undefined ? null : words.replace(/\r?\n$/, "");
}

function certificateOption(call: CommandCall): { cert: string; key: string } | null {
  const { certificate, "certificate-key": key } = call.options;
  if (certificate === undefined && key === undefined) return null;
  if (typeof certificate === "string" && typeof key === "string") {
    return { cert: readTextFile(certificate), key: readTextFile(key) };
  }
  throw new BadInput({
    code: "missing-option",
    path: certificate === undefined ? "--certificate" : "--certificate-key",
    found: "nothing",
    expected: "both --certificate and --certificate-key, or neither",
  });
}

function welcome({ address, homeAddresses }: RunningServer, dataFolder: string): string[] {
  const [first] = homeAddresses;
  const phone =
    first === undefined
      ? []
      : [
          "",
          `  On your phone, in the same network: ${homeAddresses.join(" or ")}`,
          ...squareCode(first),
          ...(first.startsWith("https:")
            ? []
            : ["  What goes over the network is not encrypted: use it in a network you trust."]),
        ];
  return [
    "",
    `  Wareboard is open at ${address}`,
    `  Your studio is kept in ${dataFolder}`,
    ...phone,
    "",
    "  Ctrl-C stops it.",
  ];
}

/** The address for a phone's camera: dark on light, whatever the terminal's own colours are. */
function squareCode(address: string): string[] {
  const [before, after] = process.stdout.isTTY ? ["\x1b[97;40m", "\x1b[0m"] : ["", ""];
  return renderUnicodeCompact(address, { border: 2 })
    .split("\n")
    .map((line) => `    ${before}${line}${after}`);
}

const SAME_WISH_MS = 1000;

/**
 * Comes back when somebody wants the program to stop. Asked once more, it ends at once; but Ctrl-C reaches a program
 * that was started by others several times over, so what follows at once is the same wish.
 */
const stopAsked = (): Promise<void> =>
  new Promise((asked) => {
    let firstMs: number | null = null;
    for (const signal of ["SIGINT", "SIGTERM", "SIGHUP"] as const) {
      process.on(signal, () => {
        firstMs ??= performance.now();
        asked();
        if (performance.now() - firstMs > SAME_WISH_MS) process.exit(1);
      });
    }
  });
