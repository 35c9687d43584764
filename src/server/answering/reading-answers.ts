import { type TSchema, type TUnsafe, Type } from "typebox";
import type { LogLook, NewLogger, ReadingsKept, ShownReadings } from "../../studio/api/readings-contract.ts";

// Shapes of the answers about readings, for the OpenAPI document.

const whole = (properties: Record<string, TSchema>) => Type.Object(properties, { additionalProperties: false });
const shapeOf = <Shape>(schema: object): TUnsafe<Shape> => Type.Unsafe<Shape>(schema);
const Text = (description: string) => Type.String({ description });
const Counted = (description: string) => Type.Integer({ minimum: 0, description });
const Numbers = (description: string) => Type.Array(Type.Number(), { description });

export const ReadingsKeptShape = shapeOf<ReadingsKept>(
  whole({
    kept: Counted("How many are on the disk now."),
    leftAside: Counted("How many were of moments at which this kiln was not firing."),
  }),
);

export const NewLoggerShape = shapeOf<NewLogger>(
  whole({
    id: Text("The logger."),
    token: Text("What it is to send with its readings. Told here and never again."),
  }),
);

export const ShownReadingsShape = shapeOf<ShownReadings>(
  whole({
    by: Type.Union(["raw", "minute", "hour"].map((by) => Type.Literal(by))),
    series: Type.Array(
      whole({
        probe: Text("The probe."),
        at: Type.Array(Text("A moment; when the minute or hour begins.")),
        tempC: Numbers("The temperature, or the mean."),
        rolledUp: Type.Optional(
          whole({
            count: Type.Array(Counted("How many readings.")),
            leastC: Numbers("The coldest."),
            mostC: Numbers("The hottest."),
            firstC: Numbers("The first."),
            lastC: Numbers("The last."),
          }),
        ),
      }),
    ),
    more: Type.Union([Text("Ask again from this moment on."), Type.Null()]),
  }),
);

export const LogLookShape = shapeOf<LogLook>(
  Type.Union([
    whole({
      kind: Type.Literal("question"),
      about: Text("What is asked."),
      question: Text("The question."),
      choices: Type.Array(
        whole({ options: Type.Object({}, { description: "To send the file again with." }), means: Text("In words.") }),
      ),
    }),
    whole({
      kind: Type.Literal("log"),
      from: Text("Its first moment."),
      to: Text("Its last."),
      probes: Type.Array(
        whole({
          column: Text("The column of the file."),
          probe: Text("What it is kept as."),
          count: Counted("How many readings."),
          leastC: Type.Number(),
          mostC: Type.Number(),
        }),
      ),
      dropped: Type.Array(whole({ line: Type.Integer(), found: Type.String(), why: Type.String() })),
      notes: Type.Array(Type.String()),
      kept: Type.Boolean(),
    }),
  ]),
);
