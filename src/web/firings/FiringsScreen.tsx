import { Page } from "../parts/index.ts";

/** Every firing. */
export default function FiringsScreen() {
  return (
    <Page title="Firings">
      <p>This screen is not there yet.</p>
    </Page>
  );
}
