import { parentPort } from "node:worker_threads";
import { loadValueBound } from "../loading/bound/load-value-bound.ts";
import type { LoadRequest } from "../loading/load-request.ts";

// One thread of `planOnWorkers`: reckons what no load of the request can be worth more than, while the others search.

parentPort?.on("message", (request: LoadRequest) => parentPort?.postMessage(loadValueBound(request).value));
