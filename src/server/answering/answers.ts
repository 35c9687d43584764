import { type TUnsafe, Type } from "typebox";
import type {
  CommandAnswer,
  ErrorAnswer,
  HistoryEntry,
  PlanEvent,
  StudioCard,
  StudioEvent,
} from "../../studio/api/contract.ts";
import { KINDS } from "../../studio/records/all-kinds.ts";
import { KIND_NAMES, type KindName } from "../../studio/records/record-kind.ts";

// Shapes of answers, for the OpenAPI document. Answers are made by typed code and sent as they are; the tests hold what
// is sent against these.

const Text = (description: string) => Type.String({ description });
const whole = (properties: Parameters<typeof Type.Object>[0], description = "") =>
  Type.Object(properties, { additionalProperties: false, ...(description === "" ? {} : { description }) });
/** The shape of a type of the contract. */
const shapeOf = <Shape>(schema: object): TUnsafe<Shape> => Type.Unsafe<Shape>(schema);
const eachKind = (shape: (kind: KindName) => object) =>
  Object.fromEntries(KIND_NAMES.map((kind) => [kind, shape(kind)])) as Record<KindName, never>;

/** Refers to a record's shape among the document's components. */
export const recordShape = (kind: KindName): TUnsafe<object> => shapeOf({ $ref: `${kind}#` });

/** The records' shapes, to be named once in the document. */
export const RECORD_SHAPES = KIND_NAMES.map((kind) => ({ ...KINDS[kind].schema, $id: kind }));

export const StudioCardShape = shapeOf<StudioCard>(
  whole({
    version: Text("Wareboard's version."),
    isNew: Type.Boolean({ description: "True until she has chosen how to begin." }),
    counts: whole(
      eachKind((kind) => Type.Integer({ minimum: 0, description: `How many ${kind}.` })),
      "How many records of each kind.",
    ),
    homeAddresses: Type.Array(Text("An address for the phone.")),
  }),
);

const HistoryEntryParts = whole({
  id: Text("The entry."),
  at: Text("When."),
  scope: Text("What it belongs to: undo goes back within one."),
  command: Text("The command's name."),
  summary: Text("What was done, in words."),
  undone: Type.Boolean(),
});
export const HistoryEntryShape = shapeOf<HistoryEntry>(HistoryEntryParts);

const changed = whole(
  Object.fromEntries(
    KIND_NAMES.map((kind) => [
      kind,
      Type.Optional(Type.Object({}, { additionalProperties: Type.Union([recordShape(kind), Type.Null()]) })),
    ]),
  ),
  "Records put in, changed or taken out (null), by kind and id.",
);
const CommandAnswerParts = whole({
  entry: HistoryEntryParts,
  changed,
  settingsChanged: Type.Boolean({ description: "True where the settings changed too." }),
});
export const CommandAnswerShape = shapeOf<CommandAnswer>(CommandAnswerParts);

export const ErrorShape = shapeOf<ErrorAnswer>(
  whole(
    {
      error: whole({
        code: Text("A stable word for machines, such as unknown-field."),
        path: Text("The field or record it is about; may be empty."),
        found: Text("What was found there."),
        expected: Text("What would do."),
        message: Text("All of it in one sentence."),
      }),
    },
    "Why it was refused.",
  ),
);

export const StudioEventShape = shapeOf<StudioEvent>(
  whole({
    entryId: Text("The history's entry; empty where the whole studio was replaced."),
    changed: whole(Object.fromEntries(KIND_NAMES.map((kind) => [kind, Type.Optional(Type.Array(Text("An id.")))]))),
    settingsChanged: Type.Boolean(),
    notice: Type.Optional(
      whole(
        {
          id: Text("The notice."),
          firingId: Text("The firing it is about."),
          firingName: Text("What that is called."),
          kind: Text("The kind of fault, or of moment to look."),
          since: Text("When it began."),
          until: Type.Union([Text("When it was over."), Type.Null()]),
          message: Text("In words."),
          isDanger: Type.Boolean({ description: "Whether the kiln may be hotter than it should be." }),
        },
        "Something to be told to her now.",
      ),
    ),
  }),
);

const event = (kind: PlanEvent["kind"], more: Parameters<typeof Type.Object>[0] = {}) =>
  whole({ kind: Type.Literal(kind), ...more });
const Plan = Type.Object({}, { description: "The plan, as load-plan/1." });
export const PlanEventShape = shapeOf<PlanEvent>(
  Type.Union([
    event("better", { pieces: Type.Integer(), value: Type.Number(), plan: Plan }),
    event("kept", { answer: CommandAnswerParts }),
    event("not-kept", { plan: Plan, reason: Text("Why it was not kept.") }),
    event("impossible", { reasons: Type.Array(Text("Why no load can be made of it.")) }),
    event("stopped"),
    event("failed", { message: Text("What went wrong.") }),
  ]),
);

/** The answers of a route: what it gives, and refusals in the one shape they all have. */
export const answers = <Answer>(answer: Answer) => ({ 200: answer, "4xx": ErrorShape, "5xx": ErrorShape });
