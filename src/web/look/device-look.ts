import { useSyncExternalStore } from "react";

/** Light, dark, or as the device is set. Each device's own choice; public/look.js reads it before anything is drawn. */
export type DeviceLook = "light" | "dark" | "device";

const KEPT_AS = "wareboard-look";
const listeners = new Set<() => void>();
const darkDevice = matchMedia("(prefers-color-scheme: dark)");

function chosenLook(): DeviceLook {
  try {
    const kept = localStorage.getItem(KEPT_AS);
    return kept === "light" || kept === "dark" ? kept : "device";
  } catch {
    // A browser that keeps nothing for us still shows the device's own look.
    return "device";
  }
}

function show(): void {
  const look = chosenLook();
  const shown = look === "device" ? (darkDevice.matches ? "dark" : "light") : look;
  document.documentElement.dataset.look = shown;
  const ground = getComputedStyle(document.documentElement).getPropertyValue("--ground").trim();
  document.querySelector('meta[name="theme-color"]')?.setAttribute("content", ground);
  for (const listener of listeners) listener();
}

darkDevice.addEventListener("change", show);
show();

/** Chooses how this device shows the studio, from now on. */
export function chooseLook(look: DeviceLook): void {
  try {
    if (look === "device") localStorage.removeItem(KEPT_AS);
    else localStorage.setItem(KEPT_AS, look);
  } catch {
    document.documentElement.dataset.look = look;
  }
  show();
}

/** What this device was told. */
export const useDeviceLook = (): DeviceLook =>
  useSyncExternalStore((listener) => {
    listeners.add(listener);
    return () => listeners.delete(listener);
  }, chosenLook);
