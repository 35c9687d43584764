import { Button } from "./Button.tsx";
import { Empty } from "./Empty.tsx";
import { Page } from "./Page.tsx";

export interface NothingHereProps {
  readonly title: string;
  /** Where she came from, and may go on from. */
  readonly back: { readonly href: string; readonly label: string };
  /** What there is not. */
  readonly heading: string;
  readonly words: string;
}

/** A screen whose record is gone, or has nothing to show yet: says so, and leads back. */
export const NothingHere = ({ title, back, heading, words }: NothingHereProps) => (
  <Page title={title} back={back}>
    <Empty title={heading} words={words} action={<Button href={back.href}>{back.label}</Button>} />
  </Page>
);
