import { tell } from "../parts/tell.ts";

/**
 * Keeps the program itself on this device, so that it opens without a network. A newer one is used when she says so.
 * Browsers allow it on this machine or over https alone; elsewhere the page must stay open at the kiln.
 */
export function keepProgram(): void {
  if (import.meta.env.DEV || !("serviceWorker" in navigator)) return;
  const { serviceWorker } = navigator;
  const hadOne = serviceWorker.controller !== null;
  let isLoadingAgain = false;
  serviceWorker.addEventListener("controllerchange", () => {
    if (!hadOne || isLoadingAgain) return;
    isLoadingAgain = true;
    location.reload();
  });
  serviceWorker
    .register("/sw.js")
    .then((registration) => {
      const offer = (worker: ServiceWorker | null) => {
        if (!worker || !serviceWorker.controller) return;
        const use = () => worker.postMessage({ type: "SKIP_WAITING" });
        tell("A newer Wareboard is here.", use, "Use it now");
      };
      offer(registration.waiting);
      registration.addEventListener("updatefound", () => {
        const { installing } = registration;
        installing?.addEventListener("statechange", () => {
          if (installing.state === "installed") offer(installing);
        });
      });
    })
    .catch(() => {
      // A browser that will not keep it still shows it.
    });
}
