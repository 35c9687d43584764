// Small things each device keeps to itself. A browser that keeps nothing forgets them; no harm is done.

const PREFIX = "wareboard-";

/** What was kept under a name, or null. */
export function keptOnDevice(name: string): string | null {
  try {
    return localStorage.getItem(PREFIX + name);
  } catch {
    return null;
  }
}

/** Keeps something under a name. */
export function keepOnDevice(name: string, text: string): void {
  try {
    localStorage.setItem(PREFIX + name, text);
  } catch {
    // Full, or forbidden: the next batch begins empty.
  }
}
