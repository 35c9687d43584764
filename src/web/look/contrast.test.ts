import { readFileSync } from "node:fs";
import { expect, test } from "vitest";

// WCAG 2.2, 1.4.3 and 1.4.11: text 4.5 to 1, edges and signs 3 to 1, by the relative luminance defined there.

const css = readFileSync(new URL("./tokens.css", import.meta.url), "utf8");

function colours(selector: string): Map<string, string> {
  const block = css.split(`${selector} {`)[1]?.split("}")[0] ?? "";
  return new Map([...block.matchAll(/--([a-z-]+): (#[0-9a-f]{6});/g)].map(([, name = "", hex = ""]) => [name, hex]));
}

function luminance(hex: string): number {
  const [r = 0, g = 0, b = 0] = [1, 3, 5].map((at) => {
    const part = Number.parseInt(hex.slice(at, at + 2), 16) / 255;
    return part <= 0.04045 ? part / 12.92 : ((part + 0.055) / 1.055) ** 2.4;
  });
  return 0.2126 * r + 0.7152 * g + 0.0722 * b;
}

function contrast(a: string | undefined, b: string | undefined): number {
  if (a === undefined || b === undefined) throw new Error("No such colour.");
  const [dark = 0, light = 0] = [luminance(a), luminance(b)].sort((x, y) => x - y);
  return (light + 0.05) / (dark + 0.05);
}

test("the measure itself: black on white is 21 to 1 (WCAG)", () => {
  expect(contrast("#000000", "#ffffff")).toBeCloseTo(21, 9);
});

test.each([":root", ':root[data-look="dark"]'])("every ink can be read on every ground: %s", (selector) => {
  const look = colours(selector);
  const of = (ink: string, ground: string) => contrast(look.get(ink), look.get(ground));
  for (const ground of ["ground", "raised", "sunken"]) {
    for (const ink of ["ink", "ink-soft", "clay-ink", "celadon", "ochre", "danger"])
      expect([ink, ground, of(ink, ground) >= 4.5]).toEqual([ink, ground, true]);
    for (const edge of ["edge", "clay"]) expect([edge, ground, of(edge, ground) >= 3]).toEqual([edge, ground, true]);
  }
  for (const [ink, wash] of [
    ["clay-ink", "clay-wash"],
    ["celadon", "celadon-wash"],
    ["ochre", "ochre-wash"],
    ["danger", "danger-wash"],
    ["on-clay", "clay"],
  ] as const) {
    expect([wash, of(ink, wash) >= 4.5]).toEqual([wash, true]);
    if (wash !== "clay") expect([wash, of("ink", wash) >= 4.5 && of("ink-soft", wash) >= 4.5]).toEqual([wash, true]);
  }
});
