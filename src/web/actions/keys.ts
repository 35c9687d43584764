/** A key with what is held down with it. */
export interface Chord {
  /** Control, or Command on a Mac. */
  readonly mod: boolean;
  readonly shift: boolean;
  readonly alt: boolean;
  /** As `KeyboardEvent.key`, in small letters. */
  readonly key: string;
}

/** What a pressed key tells. */
export interface PressedKey {
  readonly key: string;
  readonly ctrlKey: boolean;
  readonly metaKey: boolean;
  readonly shiftKey: boolean;
  readonly altKey: boolean;
}

const SPELLINGS: Readonly<Record<string, string>> = {
  esc: "escape",
  del: "delete",
  space: " ",
  up: "arrowup",
  down: "arrowdown",
  left: "arrowleft",
  right: "arrowright",
  plus: "+",
};

/**
 * Reads keys as actions name them: "mod+z", "mod+shift+z", "?", "delete", "left", "plus".
 *
 * @throws Error where no key is named: a slip of ours, not of hers
 */
export function readKeys(keys: string): Chord {
  const parts = keys.toLowerCase().split("+");
  const key = parts.pop() ?? "";
  const held = new Set(parts);
  for (const each of held) {
    if (!["mod", "shift", "alt"].includes(each)) throw new Error(`"${keys}" holds down "${each}".`);
  }
  if (key === "") throw new Error(`"${keys}" names no key; write plus for +.`);
  return { mod: held.has("mod"), shift: held.has("shift"), alt: held.has("alt"), key: SPELLINGS[key] ?? key };
}

const isLetter = (key: string): boolean => key.length === 1 && key.toLowerCase() !== key.toUpperCase();

/** Whether a pressed key is this one. Shift is part of how a sign such as "?" is typed, and is not asked about there. */
export function isPressed(chord: Chord, pressed: PressedKey, onMac: boolean): boolean {
  const mod = onMac ? pressed.metaKey : pressed.ctrlKey;
  const otherMod = onMac ? pressed.ctrlKey : pressed.metaKey;
  const isSign = chord.key.length === 1 && !isLetter(chord.key) && chord.key !== " ";
  return (
    pressed.key.toLowerCase() === chord.key &&
    mod === chord.mod &&
    !otherMod &&
    pressed.altKey === chord.alt &&
    (isSign || pressed.shiftKey === chord.shift)
  );
}

const SIGNS: Readonly<Record<string, string>> = {
  " ": "Space",
  arrowup: "↑",
  arrowdown: "↓",
  arrowleft: "←",
  arrowright: "→",
  escape: "Esc",
  delete: "Delete",
  backspace: "Backspace",
  enter: "Enter",
};

/** The keys as they stand on her keyboard: ["Ctrl", "Z"], on a Mac ["⌘", "Z"]. */
export function keyCaps(keys: string, onMac: boolean): string[] {
  const { mod, alt, shift, key } = readKeys(keys);
  const cap = SIGNS[key] ?? (key.length === 1 ? key.toUpperCase() : key[0]?.toUpperCase() + key.slice(1));
  const held = onMac ? { mod: "⌘", alt: "⌥", shift: "⇧" } : { mod: "Ctrl", alt: "Alt", shift: "Shift" };
  return [...(mod ? [held.mod] : []), ...(alt ? [held.alt] : []), ...(shift ? [held.shift] : []), cap];
}
