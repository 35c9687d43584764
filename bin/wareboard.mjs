#!/usr/bin/env node
// The command `wareboard`. Runs the built program, under Node 24 where the machine's own Node is too old.
import { existsSync } from "node:fs";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { goOnUnderNode, nodeIsNewEnough, packageRoot } from "./runtime.mjs";

const program = join(packageRoot, "dist/cli/main.js");
if (!existsSync(program)) {
  process.stderr.write(
    "Wareboard has not been built yet. Run `npm start` in its folder once, then this command again.\n",
  );
  process.exit(2);
}
if (nodeIsNewEnough()) await import(pathToFileURL(program).href);
else goOnUnderNode([program, ...process.argv.slice(2)]);
