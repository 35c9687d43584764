import { type KeyboardEvent, type ReactNode, useEffect, useId, useRef, useState } from "react";
import { createPortal } from "react-dom";
import { Button, IconButton } from "./Button.tsx";
import { MoreIcon } from "./icons.tsx";
import styles from "./Menu.module.css";

export interface MenuItem {
  readonly id: string;
  readonly label: string;
  readonly icon?: ReactNode | undefined;
  readonly onPress: () => void;
  readonly isDisabled?: boolean | undefined;
  readonly isDanger?: boolean | undefined;
}

export interface MenuProps {
  /** What is in it, said to ears: "More for the bowl". Shown on the button where `children` are left out and no icon. */
  readonly label: string;
  readonly items: readonly MenuItem[];
  /** On the button. Left out: three dots. */
  readonly children?: ReactNode | undefined;
  readonly icon?: ReactNode | undefined;
  readonly look?: "main" | "plain" | "quiet" | undefined;
}

/** A button that opens a list of things to do. Arrows, letters, Home and End go through it; Escape closes it. */
export function Menu({ label, items, children, icon, look = "quiet" }: MenuProps) {
  const button = useRef<HTMLButtonElement>(null);
  const [isOpen, setOpen] = useState(false);
  const close = (andFocus: boolean) => {
    setOpen(false);
    if (andFocus) button.current?.focus();
  };
  const open = () => setOpen(!isOpen);
  return (
    <span className={styles.menu}>
      {children === undefined ? (
        <IconButton
          ref={button}
          label={label}
          icon={icon ?? <MoreIcon />}
          look={look === "main" ? "plain" : look}
          menu={isOpen ? "open" : "closed"}
          onPress={open}
        />
      ) : (
        <Button ref={button} label={label} look={look} icon={icon} menu={isOpen ? "open" : "closed"} onPress={open}>
          {children}
        </Button>
      )}
      {isOpen && button.current && <MenuList label={label} items={items} opener={button.current} close={close} />}
    </span>
  );
}

interface MenuListProps {
  readonly label: string;
  readonly items: readonly MenuItem[];
  readonly opener: HTMLElement;
  readonly close: (andFocus: boolean) => void;
}

function MenuList({ label, items, opener, close }: MenuListProps) {
  const list = useRef<HTMLDivElement>(null);
  const id = useId();
  const closing = useRef(close);
  closing.current = close;
  useEffect(() => {
    const element = list.current;
    if (!element) return;
    element.showPopover();
    placeBeside(element, opener);
    element.querySelector<HTMLElement>("[role=menuitem]")?.focus();
    const away = (event: Event) => {
      const { target } = event;
      if (!(target instanceof Node) || element.contains(target) || opener.contains(target)) return;
      closing.current(false);
    };
    const scrolled = (event: Event) => {
      if (!(event.target instanceof Node) || !element.contains(event.target)) closing.current(false);
    };
    addEventListener("pointerdown", away, true);
    addEventListener("scroll", scrolled, true);
    return () => {
      removeEventListener("pointerdown", away, true);
      removeEventListener("scroll", scrolled, true);
    };
  }, [opener]);
  const go = (event: KeyboardEvent) => {
    event.stopPropagation();
    const all = [...(list.current?.querySelectorAll<HTMLElement>("[role=menuitem]") ?? [])];
    const at = all.indexOf(document.activeElement as HTMLElement);
    const letter = event.key.length === 1 ? event.key.toLowerCase() : null;
    const byLetter = [...all.slice(at + 1), ...all.slice(0, at + 1)].find(
      (item) => letter !== null && item.textContent?.toLowerCase().startsWith(letter),
    );
    const to = { ArrowDown: at + 1, ArrowUp: at - 1, Home: 0, End: all.length - 1 }[event.key];
    if (event.key === "Escape" || event.key === "Tab") {
      event.preventDefault();
      close(true);
    } else if (to !== undefined || byLetter) {
      event.preventDefault();
      (byLetter ?? all[((to ?? 0) + all.length) % all.length])?.focus();
    }
  };
  // Beside the button in the page, it would be cut off by a list that scrolls; inside a dialog it must stay inside.
  const home = opener.closest("dialog") ?? document.body;
  return createPortal(
    <div ref={list} popover="manual" role="menu" id={id} aria-label={label} className={styles.list} onKeyDown={go}>
      {items.map((item) => (
        <button
          key={item.id}
          type="button"
          role="menuitem"
          tabIndex={-1}
          disabled={item.isDisabled}
          className={item.isDanger ? `${styles.item} ${styles.danger}` : styles.item}
          onClick={() => {
            close(true);
            item.onPress();
          }}
        >
          {item.icon}
          <span>{item.label}</span>
        </button>
      ))}
    </div>,
    home,
  );
}

const GAP = 6;

/** Under its button, or over it where there is more room; never out of the window. */
function placeBeside(list: HTMLElement, opener: HTMLElement): void {
  const at = opener.getBoundingClientRect();
  const { width, height } = list.getBoundingClientRect();
  const roomBelow = innerHeight - at.bottom;
  const top = roomBelow >= height + GAP || roomBelow >= at.top ? at.bottom + GAP : at.top - height - GAP;
  const left = at.left + width <= innerWidth - GAP ? at.left : at.right - width;
  list.style.top = `${Math.max(GAP, Math.min(top, innerHeight - height - GAP))}px`;
  list.style.left = `${Math.max(GAP, left)}px`;
}
