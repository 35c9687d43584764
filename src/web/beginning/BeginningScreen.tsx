import { type ReactNode, useEffect, useState } from "react";
import { useLocation } from "wouter";
import { AddIcon, LoadIcon, OpenFileIcon } from "../parts/icons.tsx";
import { Page } from "../parts/Page.tsx";
import { Problem } from "../parts/Problem.tsx";
import { Spinner } from "../parts/Spinner.tsx";
import { RestoreArchive } from "../settings/RestoreArchive.tsx";
import { queries } from "../studio/cache.ts";
import { ask } from "../studio/client.ts";
import { useStudioCard } from "../studio/hooks.ts";
import styles from "./BeginningScreen.module.css";
import { ShelvesDrawing } from "./ShelvesDrawing.tsx";

/** The first visit: what this is, and three ways to begin. */
export default function BeginningScreen() {
  const [, go] = useLocation();
  const card = useStudioCard();
  const [busy, setBusy] = useState<"demo" | "empty" | null>(null);
  const [error, setError] = useState<unknown>(null);
  // Begun already, here or in another browser.
  const isNew = card?.isNew ?? true;
  useEffect(() => {
    if (!isNew && busy === null) go("/", { replace: true });
  }, [isNew, busy, go]);
  const begin = async (how: "demo" | "empty") => {
    setBusy(how);
    setError(null);
    try {
      await ask("/begin", { body: { with: how } });
      await queries.invalidateQueries();
      go(how === "demo" ? "/" : "/kilns", { replace: true });
    } catch (problem) {
      setError(problem);
      setBusy(null);
    }
  };
  return (
    <Page title="A place for every pot" isNarrow>
      <div className={styles.what}>
        <ShelvesDrawing />
        <p>
          Wareboard keeps the list of pots that wait for your kiln and works out where each one goes: which shelf, which
          posts, how much air around it. You see the load drawn, push pieces about while the rules answer, and print the
          sheet to load by.
        </p>
      </div>
      <div className={styles.ways}>
        <Way
          icon={<LoadIcon size={36} />}
          title="Look around first"
          words="Opens a studio at work: kilns, a long list of pots, loads planned and half packed. All invented, so push anything about."
          isBusy={busy === "demo"}
          isDisabled={busy !== null}
          onPress={() => void begin("demo")}
        />
        <Way
          icon={<AddIcon size={36} />}
          title="Start with your own"
          words="Opens an empty studio. First your kiln and its shelves, then the pots that wait."
          isBusy={busy === "empty"}
          isDisabled={busy !== null}
          onPress={() => void begin("empty")}
        />
        <RestoreArchive isFirst onRestored={() => go("/", { replace: true })}>
          {(choose) => (
            <Way
              icon={<OpenFileIcon size={36} />}
              title="Bring a studio back"
              words="From an archive file that Wareboard saved, here or on another machine."
              isDisabled={busy !== null}
              onPress={choose}
            />
          )}
        </RestoreArchive>
      </div>
      <Problem error={error} />
      <p className={styles.soft}>
        Everything is kept on the machine Wareboard runs on. It plans and advises; it never switches a kiln.
      </p>
    </Page>
  );
}

interface WayProps {
  readonly icon: ReactNode;
  readonly title: string;
  readonly words: string;
  readonly isBusy?: boolean;
  readonly isDisabled: boolean;
  readonly onPress: () => void;
}

const Way = ({ icon, title, words, isBusy = false, isDisabled, onPress }: WayProps) => (
  <button type="button" className={styles.way} disabled={isDisabled && !isBusy} aria-busy={isBusy} onClick={onPress}>
    <span className={styles.icon}>{isBusy ? <Spinner /> : icon}</span>
    <strong>{title}</strong>
    <span>{words}</span>
  </button>
);
