import { Page } from "../parts/index.ts";

/** One firing. */
export default function FiringScreen() {
  return (
    <Page title="Firing" back={{ href: "/firings", label: "To the firings" }}>
      <p>This screen is not there yet.</p>
    </Page>
  );
}
