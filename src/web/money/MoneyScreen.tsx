import { Page } from "../parts/index.ts";

/** What firings cost, and their fair shares. */
export default function MoneyScreen() {
  return (
    <Page title="What firing costs" back={{ href: "/firings", label: "To the firings" }}>
      <p>This screen is not there yet.</p>
    </Page>
  );
}
