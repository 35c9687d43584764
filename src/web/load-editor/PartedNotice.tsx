import { useState } from "react";
import { useLocation } from "wouter";
import { Button, MindIcon, tell, wordsOf } from "../parts/index.ts";
import { newId, useCommand } from "../studio/hooks.ts";
import styles from "./Editor.module.css";
import type { Editor } from "./use-editor.ts";

/** The load was changed elsewhere while she worked on it: nothing of hers is lost, and she decides. */
export function PartedNotice({ editor }: { readonly editor: Editor }) {
  const { parted, line } = editor;
  const command = useCommand();
  const [, go] = useLocation();
  const [isBusy, setBusy] = useState(false);
  if (parted === null) return null;
  const { mine, theirs } = parted;

  const keepAsAnother = async (): Promise<void> => {
    if (theirs === null) return;
    setBusy(true);
    const copyId = newId();
    const name = `${theirs.name.slice(0, 90)}, my own way`;
    try {
      const { changed } = await command("copy-load", { id: theirs.id, name, newId: copyId });
      const version = changed.loads?.[copyId]?.version ?? 1;
      const note = "kept my own way of loading it";
      await command("change-load", { id: copyId, version, plan: mine.plan, pins: mine.pins, note });
      line.letGo();
      go(`/loads/${copyId}`);
    } catch (error) {
      tell(wordsOf(error));
    }
    setBusy(false);
  };

  const putInItsPlace = async (): Promise<void> => {
    if (theirs === null) return;
    setBusy(true);
    const { id, version } = theirs;
    try {
      await command("change-load", {
        id,
        version,
        plan: mine.plan,
        pins: mine.pins,
        note: "put my own plan in its place",
      });
      line.letGo();
    } catch (error) {
      tell(wordsOf(error));
    }
    setBusy(false);
  };

  return (
    <div className={styles.notice} role="alert">
      <MindIcon />
      <span className={styles.noticeWords}>
        {theirs === null
          ? "This load was taken out elsewhere while you worked on it. Undo under All loads brings it back."
          : "This load was changed elsewhere while you worked on it. You see it as it is now; what you did last is kept aside."}
      </span>
      {theirs !== null && (
        <>
          <Button look="main" isBusy={isBusy} onPress={() => void keepAsAnother()}>
            Keep mine as another way
          </Button>
          <Button isBusy={isBusy} onPress={() => void putInItsPlace()}>
            Put mine in its place
          </Button>
        </>
      )}
      <Button look="quiet" onPress={() => line.letGo()}>
        Let mine go
      </Button>
    </div>
  );
}
