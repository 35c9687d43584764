import type { LightMyRequestResponse } from "fastify";
import { Check, Errors } from "typebox/value";

interface Json {
  readonly [name: string]: Json;
}

/**
 * Holds an answer against the OpenAPI document: its path, its status, its content type and its shape.
 *
 * @throws Error naming the first thing that differs
 */
export function checkAnswer(document: object, method: string, url: string, answer: LightMyRequestResponse): void {
  const path = url.split("?", 1)[0] as string;
  const whole = document as unknown as Json;
  const template = Object.keys(whole.paths ?? {}).find((each) => matches(each, path));
  if (template === undefined) {
    if (answer.statusCode === 404) return;
    throw new Error(`${method} ${path} answered ${answer.statusCode} and is not in the document.`);
  }
  const responses = whole.paths?.[template]?.[method.toLowerCase()]?.responses;
  const { statusCode } = answer;
  const response = responses?.[statusCode] ?? responses?.[`${Math.floor(statusCode / 100)}XX`];
  if (response === undefined) throw new Error(`${method} ${template} answered ${statusCode}: not in the document.`);
  const type = String(answer.headers["content-type"] ?? "").split(";", 1)[0] as string;
  const content = response.content;
  if (content === undefined) {
    if (answer.rawPayload.length === 0) return;
    throw new Error(`${method} ${template} ${statusCode} answered with a body; the document has none.`);
  }
  const media = content[type];
  if (media === undefined)
    throw new Error(`${method} ${template} ${statusCode} answered ${type}; not in the document.`);
  if (type !== "application/json") return;
  const schema = inlined(media.schema as Json, whole);
  const value = answer.json();
  if (Check(schema, value)) return;
  const errors = [...Errors(schema, value)].slice(0, 3);
  throw new Error(`${method} ${template} ${statusCode} differs from the document: ${JSON.stringify(errors)}`);
}

function matches(template: string, path: string): boolean {
  const [wanted, found] = [template.split("/"), path.split("/")];
  return wanted.length === found.length && wanted.every((part, i) => part.startsWith("{") || part === found[i]);
}

/** The schema with every reference in it written out. */
function inlined(schema: Json, document: Json): Json {
  if (typeof schema !== "object" || schema === null) return schema;
  if (Array.isArray(schema)) return schema.map((each) => inlined(each, document)) as unknown as Json;
  const refersTo: unknown = schema.$ref;
  if (typeof refersTo === "string") {
    const parts = refersTo.replace(/^#\//, "").split("/");
    const found = parts.reduce<Json | undefined>((at, part) => at?.[part], document);
    if (!found) throw new Error(`The document refers to ${refersTo}, which is not in it.`);
    return inlined(found, document);
  }
  return Object.fromEntries(Object.entries(schema).map(([name, each]) => [name, inlined(each, document)])) as Json;
}
