import type { ClearanceRules } from "../../loading/clearance-rules.ts";
import { LOAD_REQUEST_FORMAT, type LoadRequestFile } from "../../loading/load-request.ts";
import type { WareFile } from "../../ware/ware.ts";
import type { GlazeRecord } from "../records/clay-and-glaze-records.ts";
import type { KilnRecord } from "../records/kiln-record.ts";
import type { LoadRecord } from "../records/load-record.ts";
import type { WareRecord } from "../records/ware-record.ts";
import { namesApart } from "./names-apart.ts";

/** What of a kiln's record a load needs; a load that is there already holds the same. */
export type KilnForLoad = Pick<KilnRecord, "kiln" | "furniture"> & { readonly rules?: KilnRecord["rules"] | undefined };

export interface LoadRequestOptions {
  /** How many of each batch, by its id; all of it where it is not named. */
  readonly counts?: Readonly<Record<string, number>> | undefined;
  /** Clearances for this load alone, over the kiln's own. */
  readonly rules?: Partial<ClearanceRules> | undefined;
  /** The recorded glazes, so that the sheet names them. */
  readonly glazes?: readonly GlazeRecord[];
  /** Names that batches have in the load already, by the batch's id. */
  readonly taken?: ReadonlyMap<string, string>;
}

/** A request for a load, where its kinds of piece come from, and what she should know of their names. */
export interface LoadRequestOf {
  readonly request: LoadRequestFile;
  readonly sources: LoadRecord["sources"];
  readonly notes: readonly string[];
}

/** The load request of a kiln and the batches chosen for it. Pure: whether it will do, `readLoadRequest` says. */
export function loadRequestOf(
  kiln: KilnForLoad,
  ware: readonly WareRecord[],
  options: LoadRequestOptions = {},
): LoadRequestOf {
  const { counts = {}, glazes = [] } = options;
  const { names, notes } = namesApart(ware, glazes, options.taken);
  const nameOf = ({ id }: WareRecord): string => names.get(id) as string;
  const wares = ware.map((batch): WareFile => {
    const glaze = glazes.find(({ id }) => id === batch.glazeId)?.name;
    const count = counts[batch.id] ?? batch.ware.count;
    return { ...batch.ware, name: nameOf(batch), count, ...(glaze === undefined ? {} : { glaze }) };
  });
  return {
    request: {
      format: LOAD_REQUEST_FORMAT,
      kiln: kiln.kiln,
      furniture: kiln.furniture,
      ware: wares,
      rules: { ...kiln.rules, ...options.rules },
    },
    sources: ware.map((batch) => ({ ware: nameOf(batch), wareId: batch.id })),
    notes,
  };
}
