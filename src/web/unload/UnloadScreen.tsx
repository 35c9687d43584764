import { Page } from "../parts/index.ts";

/** A fired kiln, piece by piece. */
export default function UnloadScreen() {
  return (
    <Page title="Unload" back={{ href: "/firings", label: "To the firings" }}>
      <p>This screen is not there yet.</p>
    </Page>
  );
}
