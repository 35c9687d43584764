import type { ReactNode, Ref } from "react";
import { Link } from "wouter";
import styles from "./Button.module.css";
import { Spinner } from "./Spinner.tsx";

export interface ButtonProps {
  readonly children: ReactNode;
  /** `main`: the one thing to do here. `plain`: the usual. `quiet`: beside others. `danger`: takes something away. */
  readonly look?: "main" | "plain" | "quiet" | "danger" | undefined;
  readonly icon?: ReactNode | undefined;
  readonly onPress?: (() => void) | undefined;
  /** Goes to this screen instead. */
  readonly href?: string | undefined;
  readonly isDisabled?: boolean | undefined;
  /** It works on what was pressed, and takes no second press meanwhile. */
  readonly isBusy?: boolean | undefined;
  /** For a button that stays down: whether it is down. */
  readonly isPressed?: boolean | undefined;
  /** Sends the form it stands in. */
  readonly isSubmit?: boolean | undefined;
  /** As wide as there is room. */
  readonly isWide?: boolean | undefined;
  /** Said to ears where the words on it do not tell enough. */
  readonly label?: string | undefined;
  readonly describedBy?: string | undefined;
  /** For a button that opens a menu: whether it is open. */
  readonly menu?: "open" | "closed" | undefined;
  readonly ref?: Ref<HTMLButtonElement> | undefined;
}

/** A button, large enough for clayey fingers. */
export function Button(props: ButtonProps) {
  const { children, look = "plain", icon, onPress, href, isDisabled = false, isBusy = false, isPressed } = props;
  const names = [styles.button, styles[look], props.isWide ? styles.wide : ""].join(" ");
  const inside = (
    <>
      {isBusy ? <Spinner isSmall /> : icon}
      <span>{children}</span>
    </>
  );
  if (href !== undefined && !isDisabled) {
    return (
      <Link className={names} href={href} aria-label={props.label} onClick={onPress}>
        {inside}
      </Link>
    );
  }
  return (
    <button
      ref={props.ref}
      type={props.isSubmit ? "submit" : "button"}
      className={names}
      disabled={isDisabled}
      aria-disabled={isBusy || undefined}
      aria-busy={isBusy || undefined}
      aria-pressed={isPressed}
      aria-label={props.label}
      aria-describedby={props.describedBy}
      {...menuTies(props.menu)}
      onClick={(event) => {
        if (isBusy) event.preventDefault();
        else onPress?.();
      }}
    >
      {inside}
    </button>
  );
}

const menuTies = (menu: "open" | "closed" | undefined) =>
  menu && { "aria-haspopup": "menu" as const, "aria-expanded": menu === "open" };

export interface IconButtonProps {
  /** What it does, in words: said to ears and shown when the pointer rests on it. */
  readonly label: string;
  readonly icon: ReactNode;
  readonly onPress?: (() => void) | undefined;
  readonly href?: string | undefined;
  readonly isDisabled?: boolean | undefined;
  readonly isPressed?: boolean | undefined;
  readonly look?: "plain" | "quiet" | "danger" | undefined;
  /** For a button that opens a menu: whether it is open. */
  readonly menu?: "open" | "closed" | undefined;
  readonly ref?: Ref<HTMLButtonElement> | undefined;
}

/** A button with a drawing alone. */
export function IconButton({
  label,
  icon,
  onPress,
  href,
  isDisabled,
  isPressed,
  look = "quiet",
  menu,
  ref,
}: IconButtonProps) {
  const names = `${styles.button} ${styles.iconOnly} ${styles[look]}`;
  if (href !== undefined && !isDisabled) {
    return (
      <Link className={names} href={href} aria-label={label} title={label} onClick={onPress}>
        {icon}
      </Link>
    );
  }
  return (
    <button
      ref={ref}
      type="button"
      className={names}
      disabled={isDisabled}
      aria-pressed={isPressed}
      aria-label={label}
      title={label}
      {...menuTies(menu)}
      onClick={onPress}
    >
      {icon}
    </button>
  );
}
