import { expect, test } from "vitest";
import { holdTouch } from "./hold-touch.ts";

const finger = () => new Event("touchmove", { cancelable: true });

test("a finger's move is the page's until something is held, and again once nobody listens", () => {
  const element = new EventTarget();
  let isHeld = false;
  const stop = holdTouch(element, () => isHeld);
  // dispatchEvent says false where it was prevented.
  expect(element.dispatchEvent(finger())).toBe(true);
  isHeld = true;
  expect(element.dispatchEvent(finger())).toBe(false);
  // One that scrolls already cannot be taken back, and trying would only be complained of.
  expect(element.dispatchEvent(new Event("touchmove"))).toBe(true);
  stop();
  expect(element.dispatchEvent(finger())).toBe(true);
});
