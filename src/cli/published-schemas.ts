import { CalibrationSchema } from "../firing/calibration/calibration-file.ts";
import { ProgrammeSchema } from "../firing/programme/programme.ts";
import { TariffSchema } from "../firing/tariff/tariff.ts";
import { LoadPlanSchema } from "../loading/load-plan.ts";
import { LoadRequestSchema } from "../loading/load-request.ts";

/** The JSON Schemas of every file format, by the name of their file under docs/schemas. */
export function publishedSchemas(): Record<string, object> {
  const draft = { $schema: "https://json-schema.org/draft/2020-12/schema" };
  const published = (schema: object): object => ({ ...draft, ...JSON.parse(JSON.stringify(schema)) });
  return {
    "load-request-1.json": published(LoadRequestSchema),
    "load-plan-1.json": published(LoadPlanSchema),
    "calibration-1.json": published(CalibrationSchema),
    "programme-1.json": published(ProgrammeSchema),
    "tariff-1.json": published(TariffSchema),
  };
}
