import { tell } from "../parts/tell.ts";
import { StudioRefusal } from "../studio/client.ts";
import { onLateRefusal, TakenBack } from "../studio/sending.ts";

/**
 * Tells her in words what was not done, where no screen does: commands given before a reload or on another page, and
 * refusals that whoever gave the command did not catch.
 */
export function tellLateRefusals(): void {
  onLateRefusal((_, error) => tell(`Not done: ${error.message}`));
  addEventListener("unhandledrejection", (event) => {
    if (event.reason instanceof TakenBack) event.preventDefault();
    if (!(event.reason instanceof StudioRefusal)) return;
    event.preventDefault();
    tell(`Not done: ${event.reason.message}`);
  });
}
