import { type Static, Type } from "typebox";
import { readBySchema } from "../../measures/read-schema.ts";
import { Name } from "../../measures/schema.ts";
import type { Calibration } from "./calibration.ts";
import type { Priors } from "./parameters.ts";

export const CALIBRATION_FORMAT = "calibration/1";

const learned = (description: string) =>
  Type.Object(
    {
      value: Type.Number({ exclusiveMinimum: 0, maximum: 100, description }),
      sigma: Type.Number({ minimum: 0, maximum: 10, description: "Standard deviation of its logarithm." }),
    },
    { additionalProperties: false },
  );
const added = (description: string, most: number) =>
  Type.Object(
    {
      value: Type.Number({ minimum: -most, maximum: most, description }),
      sigma: Type.Number({ minimum: 0, maximum: most, description: "Standard deviation, in the same unit." }),
    },
    { additionalProperties: false },
  );

/** The file `calibration/1`: what was learned of a kiln, to predict with and to start the next calibration from. */
export const CalibrationSchema = Type.Object(
  {
    format: Type.Literal(CALIBRATION_FORMAT),
    kiln: Name("The kiln it belongs to."),
    wallFactor: learned("Multiplies the wall's conductivity."),
    wareMassFactor: learned("Multiplies the ware's mass."),
    powerFactor: learned("Multiplies the elements' power."),
    leakFactor: learned("Multiplies the loss through vent and cracks."),
    openFactor: learned("Multiplies the open way past the shelves."),
    probeOffsetC: added("How much too high the probe reads, °C.", 200),
    tilt: added("Power moved from the bottom to the top, as a share.", 1),
    middleShare: added("Power moved from the ends to the middle, as a share.", 1),
  },
  { additionalProperties: false, title: "Calibration", description: "What a kiln's own firings taught about it." },
);
export type CalibrationFile = Static<typeof CalibrationSchema>;

/** A calibration as a file to keep. */
export function calibrationFile(kiln: string, { parameters }: Pick<Calibration, "parameters">): CalibrationFile {
  const fields = parameters.map(({ name, value, sigma }) => [name, { value, sigma }] as const);
  return readCalibration({ format: CALIBRATION_FORMAT, kiln, ...Object.fromEntries(fields) });
}

/** Checks a calibration read from JSON. @throws BadInput naming the field, what was found and what would do */
export const readCalibration = (json: unknown): CalibrationFile => readBySchema(CalibrationSchema, json);

/** What `calibrated` needs of a file. */
export function valuesOf(file: CalibrationFile): Pick<Calibration, "values"> {
  const { format: _, kiln: __, ...rest } = file;
  const values = Object.fromEntries(Object.entries(rest).map(([name, { value }]) => [name, value]));
  return { values: values as unknown as Calibration["values"] };
}

/** A kept calibration as the priors of the next. The ware's mass starts anew: it belongs to another load. */
export function priorsOf(file: CalibrationFile): Priors {
  const { format: _, kiln: __, wareMassFactor: ___, ...rest } = file;
  return rest;
}
