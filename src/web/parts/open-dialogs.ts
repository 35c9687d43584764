import { watched } from "../studio/watched.ts";

/** The dialogs that are open, the one on top last. All beside it is out of reach, so what must be reached goes inside. */
export const openDialogs = watched<readonly HTMLDialogElement[]>([]);

/** Notes a dialog as open. @returns what notes it as closed again */
export function noteOpen(dialog: HTMLDialogElement): () => void {
  openDialogs.set([...openDialogs.get(), dialog]);
  return () => openDialogs.set(openDialogs.get().filter((each) => each !== dialog));
}
