import { type Static, type TSchema, Type } from "typebox";
import { WareSchema } from "../../ware/ware.ts";
import { orNull } from "../records/fields.ts";
import { WareRecordSchema } from "../records/ware-record.ts";
import { input, NewId } from "./inputs.ts";

const { id: _, createdAt: __, changedAt: ___, ...fields } = WareRecordSchema.properties;

export const NewWareSchema = input({ id: NewId, ...fields });
/** A batch that is to be written down. */
export type NewWare = Static<typeof NewWareSchema>;

// A ware's own fields, each by itself; null takes out one that may be left out.
const { name, count, diameterMm, heightMm, ...mayBeLeftOut } = WareSchema.properties;
const orTakenOut = <Schema extends TSchema>(schema: Schema) => Type.Optional(Type.Union([schema, Type.Null()]));

export const WareChangeSchema = input({
  ware: Type.Optional(
    input({
      name: Type.Optional(name),
      count: Type.Optional(count),
      diameterMm: Type.Optional(diameterMm),
      heightMm: Type.Optional(heightMm),
      handle: mayBeLeftOut.handle,
      spout: mayBeLeftOut.spout,
      profile: mayBeLeftOut.profile,
      cookie: mayBeLeftOut.cookie,
      value: orTakenOut(Type.Number({ minimum: 0, maximum: 1e6 })),
      mustFire: orTakenOut(Type.Boolean()),
      form: Type.Optional(orNull(mayBeLeftOut.form)),
      glaze: orTakenOut(Type.String({ maxLength: 120 })),
      cone: orTakenOut(Type.String({ maxLength: 12 })),
      massKg: orTakenOut(Type.Number({ exclusiveMinimum: 0, maximum: 200 })),
    }),
  ),
  stage: Type.Optional(fields.stage),
  firingKind: Type.Optional(fields.firingKind),
  dueOn: Type.Optional(fields.dueOn),
  ownerNote: Type.Optional(fields.ownerNote),
  clayBodyId: Type.Optional(fields.clayBodyId),
  glazeId: Type.Optional(fields.glazeId),
});
/** What is to be otherwise about a batch: any of its fields. */
export type WareChange = Static<typeof WareChangeSchema>;
