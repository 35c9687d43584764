import type { FastifyPluginAsyncTypebox } from "@fastify/type-provider-typebox";
import { Type } from "typebox";
import { checkPlan } from "../../loading/checker/check-plan.ts";
import { readLoadPlan } from "../../loading/read-load-plan.ts";
import { readLoadRequest } from "../../loading/read-load-request.ts";
import { BadInput } from "../../measures/bad-input.ts";
import { OneOf } from "../../measures/schema.ts";
import { loadSheetPages } from "../../sheets/load-sheet.ts";
import { pagesToSvg } from "../../sheets/pages-to-svg.ts";
import { pagesToPdf } from "../../sheets/pdf/pages-to-pdf.ts";
import { fontFaceCss } from "../../sheets/pdf/sheet-fonts.ts";
import { KINDS } from "../../studio/records/all-kinds.ts";
import { Id } from "../../studio/records/fields.ts";
import { recordPath, unknownRecord } from "../../studio/records/refusals.ts";
import { ErrorShape } from "../answering/answers.ts";
import { cleanFileName, nameFile } from "../answering/file-answer.ts";
import type { Studio } from "../studio.ts";
import { firingOfSheet } from "./firing-of-sheet.ts";

const Wish = Type.Object(
  {
    paper: Type.Optional(OneOf(["a4", "letter"], "What it is printed on; as in the studio's settings where left out.")),
    units: Type.Optional(OneOf(["metric", "inches"], "Lengths; as in the studio's settings where left out.")),
    kind: Type.Optional(OneOf(["pdf", "svg"], "pdf where left out.")),
    firing: Type.Optional(Id("A firing of this load, whose pages are put in too.")),
  },
  { additionalProperties: false },
);
const ById = Type.Object({ id: Id("The load.") }, { additionalProperties: false });
const bytes = { schema: { type: "string", format: "binary" } };

/** An SVG document brings its own style and font, and needs nothing else of the browser. */
const SVG_POLICY = "default-src 'none'; style-src 'unsafe-inline'; font-src data:; img-src data:; sandbox";

/** GET /loads/:id/sheet: the pages to carry to the kiln. */
export const sheetRoutes =
  (studio: Studio): FastifyPluginAsyncTypebox =>
  async (app) => {
    app.get(
      "/loads/:id/sheet",
      {
        schema: {
          summary: "The sheet to carry to the kiln.",
          tags: ["loads"],
          params: ById,
          querystring: Wish,
          response: {
            200: { description: "The pages", content: { "application/pdf": bytes, "image/svg+xml": bytes } },
            "4xx": ErrorShape,
            "5xx": ErrorShape,
          },
        },
      },
      async ({ params, query }, reply) => {
        const { load, settings, firing, calibrations } = await studio.store.read(async (records) => ({
          load: await records.loads.get(params.id),
          settings: await records.settings.get(),
          firing: query.firing === undefined ? undefined : await records.firings.get(query.firing),
          calibrations: query.firing === undefined ? [] : await records.calibrations.list({}),
        }));
        if (firing === null) throw unknownRecord(KINDS.firings, query.firing as string);
        if (load === null) throw unknownRecord(KINDS.loads, params.id);
        if (load.plan === null) throw notPlanned(params.id);
        const request = readLoadRequest(load.request);
        const plan = readLoadPlan(load.plan, request);
        const paper = query.paper ?? settings.paper;
        const pages = loadSheetPages(request, plan, {
          paper,
          units: query.units ?? settings.lengthUnits,
          title: load.name,
          broken: checkPlan(request, plan),
          firing: firing ? firingOfSheet({ firing, load, request, calibrations, settings, paper }) : [],
        });
        const kind = query.kind ?? "pdf";
        nameFile(reply, "inline", `${cleanFileName(load.name, "load")}.${kind}`);
        reply.header("cache-control", "no-store");
        if (kind === "pdf") return reply.type("application/pdf").send(await pagesToPdf(pages));
        reply.header("content-security-policy", SVG_POLICY);
        return reply.type("image/svg+xml; charset=utf-8").send(pagesToSvg(pages, fontFaceCss()));
      },
    );
  };

const notPlanned = (id: string): BadInput =>
  new BadInput({
    code: "not-planned",
    path: `${recordPath(KINDS.loads, id)}.plan`,
    found: "a load that has not been planned",
    expected: "a plan first: plan it, or put pieces in by hand",
  });
