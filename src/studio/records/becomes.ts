/** What a piece becomes in the fire: to be glazed next, finished, finished but a second, to be fired again as it is, lost. */
export const BECOMES = ["bisque", "finished", "second", "again", "lost"] as const;
export type Becomes = (typeof BECOMES)[number];
