import { navigate } from "wouter/use-browser-location";
import type { StudioNotice } from "../../../studio/api/notices-contract.ts";
import { tell } from "../../parts/tell.ts";
import { heardNotice } from "../../studio/heard-notice.ts";
import { deviceNotice } from "./device-notice.ts";
import { deviceNotices } from "./on-this-device.ts";

/** From now on, shows whatever the studio notices: in a few words on the screen, and as this device's own where she asked. */
export function showNotices(): void {
  heardNotice.subscribe(() => {
    const notice = heardNotice.get();
    if (notice !== null) show(notice);
  });
}

function show(notice: StudioNotice): void {
  const { title, path } = deviceNotice(notice);
  // The firing's own screen shows it already, and larger.
  if (location.pathname !== path) tell(`${title}: ${notice.firingName}`, () => navigate(path), "Look");
  if (deviceNotices.get() === "on") void showOnDevice(notice);
}

async function showOnDevice(notice: StudioNotice): Promise<void> {
  const { title, body, tag, stays, path } = deviceNotice(notice);
  const options: NotificationOptions = { body, tag, requireInteraction: stays, icon: "/icon-192.png" };
  try {
    const shown = new Notification(title, options);
    shown.onclick = () => {
      focus();
      navigate(path);
      shown.close();
    };
  } catch {
    // A phone's browser shows them through its service worker alone.
    const worker = await navigator.serviceWorker?.getRegistration();
    await worker?.showNotification(title, options).catch(() => {});
  }
}
