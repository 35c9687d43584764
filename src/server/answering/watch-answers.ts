import { type TSchema, Type } from "typebox";
import type { FiringWatch } from "../../studio/api/watch-contract.ts";

// The shape of a firing's watch, for the OpenAPI document.

const whole = (properties: Record<string, TSchema>) => Type.Object(properties, { additionalProperties: false });
const orNull = (schema: TSchema) => Type.Union([schema, Type.Null()]);
const Text = (description: string) => Type.String({ description });
const Minute = (description: string) => Type.Number({ description });

const Moment = orNull(
  whole({
    atMin: Minute("The likeliest minute."),
    fromMin: Minute("Hardly before this."),
    toMin: Minute("Hardly after this."),
  }),
);

const Place = whole({
  segment: Type.Integer({ minimum: 0 }),
  doing: Type.Union(["ramp", "wait", "hold", "over"].map((doing) => Type.Literal(doing))),
  rising: Type.Boolean(),
  askedCPerHour: orNull(Type.Number()),
  wantedC: orNull(Type.Number()),
  behindC: Type.Number({ description: "How far the kiln is short of it, in the direction it goes." }),
  holdLeftMin: orNull(Type.Number()),
});

const Heat = whole({
  level: orNull(Type.Integer({ description: "Of the plan; null at the probe." })),
  ladder: Type.Number({ description: "Its place on the ladder of cones." }),
  coneDown: orNull(Type.String()),
  next: orNull(Type.String()),
  towardNext: Type.Number(),
  cones: Type.Array(
    whole({ cone: Type.String(), bendDeg: Type.Number(), downAtMin: orNull(Minute("When it went down.")) }),
  ),
});

const Fault = whole({
  kind: Text("What is wrong."),
  sinceMin: Minute("When it began."),
  untilMin: orNull(Minute("When it was over.")),
  found: Text("By what it was found."),
  message: Text("What it may be, and what to look at."),
  isDanger: Type.Boolean({ description: "Whether the kiln may be hotter than it should be." }),
});

const Outlook = whole({
  cone: orNull(whole({ cone: Type.String(), down: Moment })),
  shutOff: Moment,
  cool: Type.Array(whole({ tempC: Type.Number(), means: Type.String(), when: Moment })),
  curve: Type.Array(Type.Tuple([Type.Number(), Type.Number()]), { description: "What is expected, [minute, °C]." }),
  kWh: orNull(whole({ soFar: Type.Number(), inAll: Type.Number() })),
});

export const WatchShape = Type.Unsafe<FiringWatch>(
  whole({
    now: Text("The moment by the studio's clock."),
    pace: Type.Number({ description: "How fast that runs: 1, but for a rehearsal's." }),
    startedAt: Text("When it was switched on: minute 0."),
    latest: orNull(whole({ at: Type.String(), tempC: Type.Number(), probe: Type.String() })),
    place: orNull(Place),
    heat: Type.Array(Heat),
    faults: Type.Array(Fault),
    outlook: orNull(Outlook),
  }),
);
