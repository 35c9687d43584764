import { useEffect, useRef } from "react";
import { useWatched } from "../studio/watched.ts";
import { Button, IconButton } from "./Button.tsx";
import { CloseIcon } from "./icons.tsx";
import styles from "./Notices.module.css";
import { holdNotice, letGoLater, notice } from "./tell.ts";

/** Where short notices show: over everything, an open dialog too. */
export function Notices() {
  const now = useWatched(notice);
  const place = useRef<HTMLDivElement>(null);
  useEffect(() => {
    const element = place.current;
    if (!element) return;
    // Shown anew, so that it stands above a dialog opened since.
    if (element.matches(":popover-open")) element.hidePopover();
    if (now) element.showPopover();
  }, [now]);
  return (
    <div
      ref={place}
      popover="manual"
      role="status"
      className={styles.place}
      onPointerEnter={holdNotice}
      onPointerLeave={letGoLater}
      onFocus={holdNotice}
      onBlur={letGoLater}
    >
      {now && (
        <div className={styles.notice}>
          <span>{now.message}</span>
          {now.undo && (
            <Button
              look="quiet"
              onPress={() => {
                now.undo?.();
                if (notice.get() === now) notice.set(null);
              }}
            >
              {now.undoLabel}
            </Button>
          )}
          <IconButton label="Close this notice" icon={<CloseIcon size={20} />} onPress={() => notice.set(null)} />
        </div>
      )}
    </div>
  );
}
