import { lazy, Suspense, useState } from "react";
import { Button } from "../parts/Button.tsx";
import { AwayIcon } from "../parts/icons.tsx";
import { Spinner } from "../parts/Spinner.tsx";
import { useConnection, useWaitingCount } from "../studio/hooks.ts";
import styles from "./ConnectionLine.module.css";

const WhatWaits = lazy(() => import("./WhatWaits.tsx"));

/** How things stand between this browser and the studio, where there is anything to say. */
export function ConnectionLine() {
  const connection = useConnection();
  const waiting = useWaitingCount();
  const [isListed, setListed] = useState(false);
  return (
    <div data-print="no">
      <div role="status">
        {connection === "away" && (
          <p className={styles.away}>
            <AwayIcon />
            <span>
              {waiting > 0
                ? "Not saved yet: the studio does not answer. Nothing is lost."
                : "The studio does not answer. You see what it said last."}
            </span>
            {waiting > 0 && (
              <Button look="quiet" onPress={() => setListed(true)}>
                What waits
              </Button>
            )}
          </p>
        )}
        {connection === "sending" && (
          <p className={styles.sending}>
            <Spinner isSmall />
            <span>Saving</span>
          </p>
        )}
      </div>
      <Suspense fallback={null}>{isListed && <WhatWaits onClose={() => setListed(false)} />}</Suspense>
    </div>
  );
}
