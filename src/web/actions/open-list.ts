import { watched } from "../studio/watched.ts";

/** Which list of actions is open over the screen: the palette, the keyboard help, or none. */
export const openList = watched<"palette" | "keys" | null>(null);
