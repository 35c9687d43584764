// After going from one screen to another the focus goes to the new screen's title, so that ears and keys start there.

let isArriving = false;

/** She is on her way to another screen. */
export function setOut(): void {
  isArriving = true;
}

/** The screen is there: true once after each setting out. */
export function arrived(): boolean {
  const was = isArriving;
  isArriving = false;
  return was;
}
