import type { StudioNotice } from "../../../studio/api/notices-contract.ts";
import { faultTitle } from "../words/fault-words.ts";

const TITLES: Readonly<Record<string, string>> = {
  "cone due": "Look at the cones",
  "may be opened": "It may be opened",
};

/** A notice as this device shows it. */
export interface DeviceNotice {
  readonly title: string;
  readonly body: string;
  /** One fault is one notice: told again by the same tag, it takes the place of the earlier one. */
  readonly tag: string;
  /** Stays until it is looked at. */
  readonly stays: boolean;
  readonly path: string;
}

export function deviceNotice({ id, firingId, firingName, kind, message, isDanger }: StudioNotice): DeviceNotice {
  const what = TITLES[kind] ?? faultTitle({ kind });
  return {
    title: `${isDanger ? "Go to the kiln: " : ""}${what}`,
    body: `${firingName}. ${message}`,
    tag: `wareboard-${id}`,
    stays: isDanger,
    path: `/firings/${encodeURIComponent(firingId)}/watch`,
  };
}
