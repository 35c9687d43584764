import { useEffect } from "react";

/**
 * Keeps the screen on while this is shown, where the browser has a way and allows it: hands full of ware cannot tap it
 * awake. (Browsers have it only on a page that came over https or from this machine.)
 */
export function useAwake(): void {
  useEffect(() => {
    if (!("wakeLock" in navigator)) return;
    let wanted = true;
    let lock: WakeLockSentinel | null = null;
    const hold = () => {
      if (document.visibilityState !== "visible") return;
      navigator.wakeLock.request("screen").then(
        (given) => {
          if (wanted) lock = given;
          else void given.release();
        },
        // A phone short of power may say no; then it dims as ever.
        () => {},
      );
    };
    hold();
    // The browser lets go whenever the page is hidden.
    document.addEventListener("visibilitychange", hold);
    return () => {
      wanted = false;
      document.removeEventListener("visibilitychange", hold);
      void lock?.release();
    };
  }, []);
}
