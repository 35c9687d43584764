const SCOPE_OF_KIND: Readonly<Record<string, string>> = {
  ware: "ware",
  kiln: "kilns",
  "clay-body": "materials",
  glaze: "materials",
  load: "loads",
  settings: "settings",
  note: "notes",
  photo: "photos",
};

/** Commands on one load that is there already: undone within that load. */
const ON_ONE_LOAD = new Set(["change-load", "choose-load-ware", "tick-load"]);

/**
 * What a command belongs to, for undo, before the studio has answered. The studio's own word is `HistoryEntry.scope`;
 * scope-of.test.ts holds this to it.
 */
export function scopeOf(name: string, input: unknown): string {
  if (ON_ONE_LOAD.has(name)) return `load:${(input as { id?: unknown }).id}`;
  const kind = name.replace(/^[a-z]+-/, "");
  return SCOPE_OF_KIND[kind] ?? kind;
}
