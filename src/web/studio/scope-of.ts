const SCOPE_OF_KIND: Readonly<Record<string, string>> = {
  ware: "ware",
  kiln: "kilns",
  "clay-body": "materials",
  glaze: "materials",
  load: "loads",
  settings: "settings",
  note: "notes",
  photo: "photos",
  firing: "firings",
  programme: "firings",
  logger: "kilns",
  upkeep: "kilns",
  calibration: "kilns",
  from: "kilns",
};

/** Commands on one load that is there already: undone within that load. */
const ON_ONE_LOAD = new Set(["change-load", "choose-load-ware", "tick-load", "unpack-load"]);

/** Commands on one firing that is there already: undone within that firing. */
const ON_ONE_FIRING = new Set([
  "change-firing",
  "tick-check",
  "start-firing",
  "shut-off",
  "end-firing",
  "see-cones",
  "read-meter",
  "judge-pieces",
]);

/**
 * What a command belongs to, for undo, before the studio has answered. The studio's own word is `HistoryEntry.scope`;
 * scope-of.test.ts holds this to it.
 */
export function scopeOf(name: string, input: unknown): string {
  if (ON_ONE_LOAD.has(name)) return `load:${(input as { id?: unknown }).id}`;
  if (ON_ONE_FIRING.has(name)) return `firing:${(input as { id?: unknown }).id}`;
  if (name === "note-notices") return `notices:${(input as { id?: unknown }).id}`;
  const kind = name.replace(/^[a-z]+-/, "");
  return SCOPE_OF_KIND[kind] ?? kind;
}
