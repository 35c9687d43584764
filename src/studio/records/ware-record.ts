import { type Static, Type } from "typebox";
import { FIRING_KINDS } from "../../firing/cones/firing-kind.ts";
import { parseCone } from "../../firing/cones/parse-cone.ts";
import { LOAD_REQUEST_FORMAT } from "../../loading/load-request.ts";
import { readLoadRequest } from "../../loading/read-load-request.ts";
import { BadInput, shown } from "../../measures/bad-input.ts";
import { OneOf } from "../../measures/schema.ts";
import { type WareFile, WareSchema } from "../../ware/ware.ts";
import { Day, Id, orNull, stamps, Words } from "./fields.ts";
import { type RecordKind, within } from "./record-kind.ts";

/** How far a piece has come. Greenware is raw clay; finished ware waits for nothing more. */
export const WARE_STAGES = ["greenware", "bisque", "glazed", "finished"] as const;
export type WareStage = (typeof WARE_STAGES)[number];

/** A batch of one kind of piece, and what is to be done with it. */
export const WareRecordSchema = Type.Object(
  {
    id: Id("The batch."),
    ware: WareSchema,
    stage: OneOf(WARE_STAGES, "How far it has come."),
    firingKind: orNull(OneOf(FIRING_KINDS, "The firing it waits for.")),
    dueOn: orNull(Day("The day it is wanted.")),
    ownerNote: Words("Whose it is, what was promised."),
    clayBodyId: orNull(Id("What it is made of.")),
    glazeId: orNull(Id("The recorded glaze it wears; a glaze in her own words goes in ware.glaze instead.")),
    ...stamps,
  },
  { additionalProperties: false },
);
export type WareRecord = Static<typeof WareRecordSchema>;

export const WARE: RecordKind<typeof WareRecordSchema> = {
  name: "ware",
  one: "ware",
  schema: WareRecordSchema,
  refersTo: { clayBodyId: "clayBodies", glazeId: "glazes" },
  versioned: false,
  check: ({ ware, glazeId }) => {
    checkWare(ware, "ware");
    if (ware.cone !== undefined && ware.cone !== "") parseCone(ware.cone, "ware.cone");
    if (glazeId !== null && ware.glaze !== undefined && ware.glaze !== "") {
      const found = `${shown(ware.glaze)} beside a recorded glaze`;
      throw new BadInput({ code: "said-twice", path: "ware.glaze", found, expected: "one of them" });
    }
  },
};

/** Any kiln would do here: the question is whether a load request takes the piece's own measures. */
const ANY_KILN = {
  format: LOAD_REQUEST_FORMAT,
  kiln: { name: "any", chamber: { shape: "round", diameterMm: 400, depthMm: 400 } },
  furniture: {
    shelves: [{ name: "any", shape: "disc", diameterMm: 350, thicknessMm: 15, count: 1 }],
    posts: [{ heightMm: 100, widthMm: 30, shape: "square", count: 3 }],
  },
};

function checkWare(ware: WareFile, path: string): void {
  try {
    // One of them: how many a single load may hold is not this record's question.
    readLoadRequest({ ...ANY_KILN, ware: [{ ...ware, count: 1 }] });
  } catch (error) {
    if (!(error instanceof BadInput)) throw error;
    const { code, found, expected } = error;
    const inside = error.path.replace(/^ware\[0\]\.?/, "");
    within(path, () => {
      throw new BadInput({ code, path: inside, found, expected });
    });
  }
}
