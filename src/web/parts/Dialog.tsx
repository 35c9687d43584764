import { type ReactNode, useEffect, useId, useRef } from "react";
import { IconButton } from "./Button.tsx";
import styles from "./Dialog.module.css";
import { CloseIcon } from "./icons.tsx";
import { noteOpen } from "./open-dialogs.ts";

export interface DialogProps {
  readonly title: string;
  readonly isOpen: boolean;
  /** Asked to close: Escape, the cross, a press beside it. */
  readonly onClose: () => void;
  readonly children: ReactNode;
  /** The buttons at its foot, the main one last. */
  readonly actions?: ReactNode | undefined;
  readonly isWide?: boolean | undefined;
  /** A press beside it or on Escape does not close it: where something she typed would be lost. */
  readonly staysOpen?: boolean | undefined;
}

/** A dialog in the middle; on a phone a sheet from the bottom, where the thumb is. */
export function Dialog(props: DialogProps) {
  return props.isOpen ? <OpenDialog {...props} /> : null;
}

function OpenDialog({ title, onClose, children, actions, isWide = false, staysOpen = false }: DialogProps) {
  const dialog = useRef<HTMLDialogElement>(null);
  const titleId = useId();
  useEffect(() => {
    // The browser's own: all behind it is out of reach, Escape asks to close, focus goes back where it was.
    const opener = document.activeElement;
    dialog.current?.showModal();
    const closed = dialog.current ? noteOpen(dialog.current) : null;
    // The field that asked to be first; otherwise the title, not the cross, which the browser would take.
    const first = dialog.current?.querySelector<HTMLElement>("[data-first]") ?? dialog.current?.querySelector("h2");
    first?.focus();
    return () => {
      closed?.();
      // A piece in a drawing can have been where she was, too.
      if ((opener instanceof HTMLElement || opener instanceof SVGElement) && opener.isConnected) opener.focus();
    };
  }, []);
  return (
    // biome-ignore lint/a11y/useKeyWithClickEvents: pressing beside it is a short way more; Escape and the cross close it too.
    <dialog
      ref={dialog}
      className={isWide ? `${styles.dialog} ${styles.wide}` : styles.dialog}
      aria-labelledby={titleId}
      onCancel={(event) => {
        // A field's own list inside may be what was closed.
        if (event.target !== dialog.current) return;
        event.preventDefault();
        if (!staysOpen) onClose();
      }}
      onClick={(event) => {
        if (event.target === dialog.current && !staysOpen) onClose();
      }}
    >
      <div className={styles.inside}>
        <header className={styles.head}>
          <h2 id={titleId} tabIndex={-1}>
            {title}
          </h2>
          <IconButton label="Close" icon={<CloseIcon />} onPress={onClose} />
        </header>
        {/* biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be reachable by the keyboard alone. */}
        <section className={styles.body} tabIndex={0} aria-labelledby={titleId}>
          {children}
        </section>
        {actions && <footer className={styles.foot}>{actions}</footer>}
      </div>
    </dialog>
  );
}
