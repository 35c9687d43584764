import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { ALL_COMMANDS } from "../../studio/commands/all-commands.ts";
import { type TestStudio, testStudio } from "../testing/test-studio.ts";

interface Operation {
  readonly summary?: string;
  readonly parameters?: readonly { readonly name: string; readonly in: string; readonly required?: boolean }[];
  readonly requestBody?: { readonly content: Record<string, { readonly schema: object }> };
  readonly responses: Record<string, { readonly description?: string }>;
}
interface Document {
  readonly openapi: string;
  readonly info: { readonly title: string; readonly version: string };
  readonly paths: Record<string, Record<string, Operation>>;
  readonly components: { readonly schemas: Record<string, object> };
}

let studio: TestStudio;
let document: Document;
beforeAll(async () => {
  studio = await testStudio();
  document = (await studio.app.inject({ url: "/api/openapi.json" })).json() as Document;
});
afterAll(() => studio.end());

/** Every route of the contract (src/studio/api/contract.ts), as it is written there. */
const CONTRACT = [
  "GET /studio",
  ...["ware", "kilns", "clayBodies", "glazes", "loads", "firings", "notes", "photos"].flatMap((kind) => [
    `GET /${kind}`,
    `GET /${kind}/{id}`,
  ]),
  ...["programmes", "calibrations", "upkeep", "loggers"].flatMap((kind) => [`GET /${kind}`, `GET /${kind}/{id}`]),
  "GET /history",
  "POST /undo",
  "POST /redo",
  "POST /plans",
  "GET /plans/{id}/events",
  "DELETE /plans/{id}",
  "GET /loads/{id}/sheet",
  "POST /photos",
  "GET /photos/{id}/picture",
  "GET /ware.csv",
  "POST /ware-csv-preview",
  "GET /archive",
  "POST /archive",
  "GET /backups",
  "POST /backups",
  "POST /backups/{name}/restore",
  "POST /begin",
  "POST /readings",
  "POST /loggers",
  "GET /firings/{id}/watch",
  "GET /firings/{id}/watch/events",
  "GET /mail",
  "POST /mail",
  "DELETE /mail",
  "POST /notices/try",
  "GET /firings/{id}/readings",
  "POST /firings/{id}/readings",
  "POST /firings/{id}/readings-csv",
  "GET /settings",
  "GET /events",
  "GET /session",
  "POST /session",
  "DELETE /session",
];

// What the OpenAPI Specification 3.1.0 asks of a document (4.8: OpenAPI, Info, Paths, Operation, Parameter, Responses).
describe("the OpenAPI document", () => {
  const operations = () =>
    Object.entries(document.paths).flatMap(([path, methods]) =>
      Object.entries(methods).map(([method, operation]) => ({
        name: `${method.toUpperCase()} ${path}`,
        path,
        operation,
      })),
    );

  test("says its version, its title and its own", () => {
    expect(document.openapi).toMatch(/^3\.1\.\d+$/);
    expect(document.info).toMatchObject({ title: "Wareboard", version: "0.0.0" });
  });

  test("holds every route of the contract and every command, and nothing else", () => {
    const wanted = [...CONTRACT, ...[...ALL_COMMANDS.keys()].map((name) => `POST /commands/${name}`)];
    const found = operations().map(({ name }) => name.replace(" /api/", " /"));
    expect(found.sort()).toEqual(wanted.sort());
  });

  test("describes each operation, its path's parameters and every answer", () => {
    for (const { name, path, operation } of operations()) {
      expect([name, operation.summary]).toEqual([name, expect.stringMatching(/\S.*\.$/)]);
      const named = [...path.matchAll(/\{(\w+)\}/g)].map(([, each]) => each);
      const inPath = (operation.parameters ?? []).filter((parameter) => parameter.in === "path");
      expect([name, inPath.map((parameter) => parameter.name)]).toEqual([name, named]);
      expect(inPath.every(({ required }) => required === true)).toBe(true);
      expect(Object.keys(operation.responses).length).toBeGreaterThan(0);
      for (const [status, { description }] of Object.entries(operation.responses)) {
        expect([name, status]).toEqual([name, expect.stringMatching(/^([1-5]\d\d|[1-5]XX|default)$/)]);
        expect(typeof description).toBe("string");
      }
    }
  });

  test("refers to nothing that is not in it", () => {
    const references = [...JSON.stringify(document).matchAll(/"\$ref":"([^"]+)"/g)].map(([, to]) => to as string);
    expect(references.length).toBeGreaterThan(10);
    for (const reference of new Set(references)) {
      expect(reference).toMatch(/^#\/components\/schemas\/\w+$/);
      expect(document.components.schemas).toHaveProperty(reference.split("/").at(-1) as string);
    }
  });

  test("says of a command what its input is", () => {
    const body = document.paths["/api/commands/add-ware"]?.post?.requestBody?.content["application/json"]?.schema;
    expect(body).toMatchObject({
      required: ["key", "input"],
      additionalProperties: false,
      properties: { input: { type: "object", required: ["ware"], additionalProperties: false } },
    });
  });
});
