import { CONES } from "../../../firing/cones/cone.ts";
import { FIRING_KINDS } from "../../../firing/cones/firing-kind.ts";
import { parseCone } from "../../../firing/cones/parse-cone.ts";
import { BadInput, shown } from "../../../measures/bad-input.ts";
import { parseLengthMm } from "../../../measures/length.ts";
import { FORM_NAMES } from "../../../ware/forms.ts";
import type { Cookie, Protrusion, WareFile } from "../../../ware/ware.ts";
import type { ClayBodyRecord, GlazeRecord } from "../clay-and-glaze-records.ts";
import { WARE_STAGES, type WareRecord } from "../ware-record.ts";
import { named, nameOf, oneOf, readNumber } from "./read-cells.ts";

/** The recorded clay bodies and glazes, which the file calls by name. */
export interface WareNames {
  readonly clayBodies: readonly ClayBodyRecord[];
  readonly glazes: readonly GlazeRecord[];
}

/** A record as it is being filled in, cell by cell; checked when it is whole. */
export type WareDraft = { -readonly [Field in keyof WareRecord]: WareRecord[Field] };

/** One column of a ware list. */
export interface WareColumn {
  readonly heading: string;
  /** What the file says of a record; empty where there is nothing to say. */
  readonly write: (record: WareRecord, names: WareNames) => string;
  /** Puts a cell that is not empty into the draft; gives what she should know of it. @throws BadInput */
  readonly read: (draft: WareDraft, cell: string, names: WareNames) => string | undefined;
  /** Takes out of the draft what the column says. */
  readonly clear: (draft: WareDraft) => void;
}

type WareField = "name" | "count" | "diameterMm" | "heightMm" | "form" | "value" | "massKg";

const ofWare = <Field extends WareField>(
  heading: Field,
  read: (cell: string, heading: string) => WareFile[Field],
): WareColumn => ({
  heading,
  write: ({ ware }) => String(ware[heading] ?? ""),
  read: (draft, cell) => {
    draft.ware[heading] = read(cell, heading);
    return undefined;
  },
  clear: (draft) => {
    delete (draft.ware as Partial<WareFile>)[heading];
  },
});

const ofPart = (part: "handle" | "spout", field: keyof Protrusion): WareColumn => {
  const heading = `${part}${field[0]?.toUpperCase()}${field.slice(1)}`;
  return {
    heading,
    write: ({ ware }) => String(ware[part]?.[field] ?? ""),
    read: (draft, cell) => {
      const number = field === "angleDeg" ? readNumber(cell, heading) : parseLengthMm(cell, "mm", heading);
      draft.ware[part] = { ...draft.ware[part], [field]: number } as Protrusion;
      return undefined;
    },
    clear: (draft) => {
      if (!draft.ware[part]) return;
      const { [field]: _, ...rest } = draft.ware[part];
      draft.ware[part] = Object.keys(rest).length === 0 ? null : (rest as Protrusion);
    },
  };
};

const ofCookie = (heading: string, field: "diameterMm" | "thicknessMm"): WareColumn => ({
  heading,
  write: ({ ware }) => String(ware.cookie?.[field] ?? ""),
  read: (draft, cell) => {
    const size = parseLengthMm(cell, "mm", heading);
    draft.ware.cookie = { ...draft.ware.cookie, [field]: size } as Cookie;
    return undefined;
  },
  clear: (draft) => {
    if (!draft.ware.cookie) return;
    const { [field]: _, ...rest } = draft.ware.cookie;
    draft.ware.cookie = Object.keys(rest).length === 0 ? null : (rest as unknown as Cookie);
  },
});

const stage: WareColumn = {
  heading: "stage",
  write: (record) => record.stage,
  read: (draft, cell) => {
    draft.stage = oneOf(WARE_STAGES, cell, "stage");
    return undefined;
  },
  clear: () => {
    throw new BadInput({ code: "missing-field", path: "stage", found: "nothing", expected: WARE_STAGES.join(" or ") });
  },
};

const firing: WareColumn = {
  heading: "firing",
  write: (record) => record.firingKind ?? "",
  read: (draft, cell) => {
    draft.firingKind = oneOf(FIRING_KINDS, cell, "firing");
    return undefined;
  },
  clear: (draft) => {
    draft.firingKind = null;
  },
};

const cone: WareColumn = {
  heading: "cone",
  // With its word before it: a spreadsheet takes a bare 06 for the number 6, which is another cone.
  write: ({ ware }) => (ware.cone ? `cone ${parseCone(ware.cone)}` : ""),
  read: (draft, cell) => {
    const found = parseCone(cell, "cone");
    draft.ware.cone = found;
    const cooler = CONES.find((each) => each === `0${found}`);
    return cooler !== undefined && cell.trim() === found
      ? `cone ${found}, not ${cooler}? A spreadsheet drops the zero; "cone ${cooler}" keeps it.`
      : undefined;
  },
  clear: (draft) => {
    delete draft.ware.cone;
  },
};

const glaze: WareColumn = {
  heading: "glaze",
  write: (record, { glazes }) => nameOf(glazes, record.glazeId) ?? record.ware.glaze ?? "",
  read: (draft, cell, { glazes }) => {
    const recorded = named(glazes, cell, "glaze");
    draft.glazeId = recorded?.id ?? null;
    if (recorded) delete draft.ware.glaze;
    else draft.ware.glaze = cell;
    return recorded ? undefined : `${shown(cell)} is not among the recorded glazes and is kept as words.`;
  },
  clear: (draft) => {
    draft.glazeId = null;
    delete draft.ware.glaze;
  },
};

const clayBody: WareColumn = {
  heading: "clayBody",
  write: (record, { clayBodies }) => nameOf(clayBodies, record.clayBodyId) ?? "",
  read: (draft, cell, { clayBodies }) => {
    const recorded = named(clayBodies, cell, "clayBody");
    if (!recorded) {
      const expected = "the name of a recorded clay body, or nothing";
      throw new BadInput({ code: "unknown-name", path: "clayBody", found: shown(cell), expected });
    }
    draft.clayBodyId = recorded.id;
    return undefined;
  },
  clear: (draft) => {
    draft.clayBodyId = null;
  },
};

const mustFire: WareColumn = {
  heading: "mustFire",
  write: ({ ware }) => (ware.mustFire ? "yes" : ""),
  read: (draft, cell) => {
    draft.ware.mustFire = oneOf(["yes", "no"], cell, "mustFire") === "yes";
    return undefined;
  },
  clear: (draft) => {
    delete draft.ware.mustFire;
  },
};

const dueOn: WareColumn = {
  heading: "dueOn",
  write: (record) => record.dueOn ?? "",
  read: (draft, cell) => {
    draft.dueOn = cell.trim();
    return undefined;
  },
  clear: (draft) => {
    draft.dueOn = null;
  },
};

const ownerNote: WareColumn = {
  heading: "note",
  write: (record) => record.ownerNote,
  read: (draft, cell) => {
    draft.ownerNote = cell;
    return undefined;
  },
  clear: (draft) => {
    draft.ownerNote = "";
  },
};

const length = (cell: string, heading: string): number => parseLengthMm(cell, "mm", heading);

/** The heading of the column that says which batch a row is. */
export const ID_HEADING = "id";

/** The columns of a ware list, after the id. A drawn profile has none: it stays with its batch. */
export const WARE_COLUMNS: readonly WareColumn[] = [
  ofWare("name", (cell) => cell),
  ofWare("count", readNumber),
  ofWare("form", (cell) => oneOf(FORM_NAMES, cell, "form")),
  ofWare("diameterMm", length),
  ofWare("heightMm", length),
  stage,
  firing,
  cone,
  glaze,
  clayBody,
  dueOn,
  ofWare("value", readNumber),
  mustFire,
  ofWare("massKg", readNumber),
  ofPart("handle", "reachMm"),
  ofPart("handle", "widthMm"),
  ofPart("handle", "angleDeg"),
  ofPart("spout", "reachMm"),
  ofPart("spout", "widthMm"),
  ofPart("spout", "angleDeg"),
  ofCookie("cookieDiameterMm", "diameterMm"),
  ofCookie("cookieThicknessMm", "thicknessMm"),
  ownerNote,
];
