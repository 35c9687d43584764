import { useEffect, useState } from "react";
import { Button } from "../parts/Button.tsx";
import { Dialog } from "../parts/Dialog.tsx";
import { queries } from "../studio/cache.ts";
import { useWaitingCount } from "../studio/hooks.ts";
import type { WaitingCommand } from "../studio/line.ts";
import { line } from "../studio/sending.ts";
import styles from "./WhatWaits.module.css";

/** "change-load" as "Change load". */
const inWords = (name: string): string => {
  const words = name.replaceAll("-", " ");
  return `${words.charAt(0).toUpperCase()}${words.slice(1)}`;
};

/** What was done here and is not saved yet, in the order it goes. The way out where one change holds up the others. */
export default function WhatWaits({ onClose }: { readonly onClose: () => void }) {
  const count = useWaitingCount();
  const [waiting, setWaiting] = useState<readonly WaitingCommand[]>([]);
  // biome-ignore lint/correctness/useExhaustiveDependencies: another length of the line is another line.
  useEffect(() => {
    void line.line().then(setWaiting);
  }, [count]);
  const letGo = async (key: string) => {
    await line.letGo(key);
    await queries.invalidateQueries();
  };
  return (
    <Dialog title="Not saved yet" isOpen onClose={onClose}>
      <p>
        These are kept on this device and go to the studio by themselves as soon as it answers, in this order. Leave
        them be, unless one holds up the rest.
      </p>
      {waiting.length === 0 && <p role="status">Everything is saved.</p>}
      <ol className={styles.list}>
        {waiting.map(({ key, name }) => (
          <li key={key}>
            <span>{inWords(name)}</span>
            <Button look="danger" label={`Give up: ${inWords(name)}`} onPress={() => void letGo(key)}>
              Give up
            </Button>
          </li>
        ))}
      </ol>
    </Dialog>
  );
}
