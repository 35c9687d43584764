import { Page } from "../parts/index.ts";

/** What a kiln's firings have taught. */
export default function LearnScreen() {
  return (
    <Page title="What this kiln does" back={{ href: "/firings", label: "To the firings" }}>
      <p>This screen is not there yet.</p>
    </Page>
  );
}
