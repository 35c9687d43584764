import type { StudioNotice } from "../../studio/api/notices-contract.ts";
import { watched } from "./watched.ts";

/** The notice that the studio told last. */
export const heardNotice = watched<StudioNotice | null>(null);
