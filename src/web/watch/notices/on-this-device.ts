import { watched } from "../../studio/watched.ts";

// Whether this device shows the studio's notices as its own. Asked for by a button, never by itself.

const KEY = "wareboard-notices";

export type DeviceNotices = "on" | "off" | "refused" | "cannot";

/** How things stand here: the browser may have said no for good, or have no such thing. */
function asItStands(): DeviceNotices {
  if (!("Notification" in globalThis)) return "cannot";
  if (Notification.permission === "denied") return "refused";
  if (Notification.permission !== "granted") return "off";
  try {
    return localStorage.getItem(KEY) === "on" ? "on" : "off";
  } catch {
    return "off";
  }
}

export const deviceNotices = watched<DeviceNotices>(asItStands());

/** Asks the browser; only ever called by a press. */
export async function askForNotices(): Promise<DeviceNotices> {
  if (!("Notification" in globalThis)) return "cannot";
  if ((await Notification.requestPermission()) === "granted") remember("on");
  deviceNotices.set(asItStands());
  return deviceNotices.get();
}

export function noMoreNotices(): void {
  remember("off");
  deviceNotices.set(asItStands());
}

function remember(how: "on" | "off"): void {
  try {
    localStorage.setItem(KEY, how);
  } catch {
    // A browser that keeps nothing asks again the next time.
  }
}
