import { Page } from "../parts/index.ts";

/** What keeps a kiln in repair. */
export default function UpkeepScreen() {
  return (
    <Page title="Upkeep" back={{ href: "/firings", label: "To the firings" }}>
      <p>This screen is not there yet.</p>
    </Page>
  );
}
