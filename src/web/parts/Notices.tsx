import { useEffect, useRef } from "react";
import { createPortal } from "react-dom";
import { useWatched } from "../studio/watched.ts";
import { Button, IconButton } from "./Button.tsx";
import { CloseIcon } from "./icons.tsx";
import styles from "./Notices.module.css";
import { openDialogs } from "./open-dialogs.ts";
import { holdNotice, letGoLater, notice } from "./tell.ts";

/** Where short notices show: over everything, an open dialog too. */
export function Notices() {
  const now = useWatched(notice);
  // An open dialog puts all beside it out of reach: then the notice stands inside it, so that its button can be pressed.
  const inside = useWatched(openDialogs).at(-1) ?? document.body;
  const place = useRef<HTMLDivElement>(null);
  useEffect(() => {
    const element = place.current;
    if (!element) return;
    // Shown anew, so that it stands above all that was opened since; and where it was moved, for that hides it.
    if (element.matches(":popover-open")) element.hidePopover();
    if (now && inside.isConnected) element.showPopover();
  }, [now, inside]);
  return createPortal(
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
    </div>,
    inside,
  );
}
