import { Page } from "../parts/index.ts";

/** A firing as it goes on. */
export default function WatchScreen() {
  return (
    <Page title="Watch" back={{ href: "/firings", label: "To the firings" }}>
      <p>This screen is not there yet.</p>
    </Page>
  );
}
