import { describe, expect, test } from "vitest";
import { isPressed, keyCaps, type PressedKey, readKeys } from "./keys.ts";

const pressed = (key: string, held: Partial<PressedKey> = {}): PressedKey => ({
  key,
  ctrlKey: false,
  metaKey: false,
  shiftKey: false,
  altKey: false,
  ...held,
});

describe("keys of an action", () => {
  test("mod is Control, on a Mac Command, and not the other", () => {
    const undo = readKeys("mod+z");
    expect(isPressed(undo, pressed("z", { ctrlKey: true }), false)).toBe(true);
    expect(isPressed(undo, pressed("z", { metaKey: true }), true)).toBe(true);
    expect(isPressed(undo, pressed("z", { metaKey: true }), false)).toBe(false);
    expect(isPressed(undo, pressed("z", { ctrlKey: true }), true)).toBe(false);
    expect(isPressed(undo, pressed("z"), false)).toBe(false);
  });

  test("shift tells undo from redo, and capitals are the same key", () => {
    const held = { ctrlKey: true, shiftKey: true };
    expect(isPressed(readKeys("mod+shift+z"), pressed("Z", held), false)).toBe(true);
    expect(isPressed(readKeys("mod+z"), pressed("Z", held), false)).toBe(false);
  });

  test("a sign is a sign however a keyboard types it", () => {
    expect(isPressed(readKeys("?"), pressed("?", { shiftKey: true }), false)).toBe(true);
    expect(isPressed(readKeys("?"), pressed("?"), false)).toBe(true);
    expect(isPressed(readKeys("mod+plus"), pressed("+", { ctrlKey: true, shiftKey: true }), false)).toBe(true);
  });

  test("arrows and Space are told from arrows with shift", () => {
    expect(isPressed(readKeys("shift+left"), pressed("ArrowLeft", { shiftKey: true }), false)).toBe(true);
    expect(isPressed(readKeys("left"), pressed("ArrowLeft", { shiftKey: true }), false)).toBe(false);
    expect(isPressed(readKeys("space"), pressed(" "), false)).toBe(true);
  });

  test("are shown as they stand on her keyboard", () => {
    expect(keyCaps("mod+shift+z", false)).toEqual(["Ctrl", "Shift", "Z"]);
    expect(keyCaps("mod+k", true)).toEqual(["⌘", "K"]);
    expect(keyCaps("left", false)).toEqual(["←"]);
    expect(keyCaps("pageup", false)).toEqual(["Pageup"]);
  });

  test("a slip in naming them is found at once", () => {
    expect(() => readKeys("ctrl+z")).toThrow(/ctrl/);
    expect(() => readKeys("mod+")).toThrow(/names no key/);
  });
});
