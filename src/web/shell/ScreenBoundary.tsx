import { Component, type ReactNode } from "react";
import { Button } from "../parts/Button.tsx";
import { Page } from "../parts/Page.tsx";

interface State {
  readonly error: Error | null;
}

/** Where a screen breaks off, says so in words and what to do; the rest of the studio goes on. */
export class ScreenBoundary extends Component<{ readonly children: ReactNode }, State> {
  override state: State = { error: null };

  static getDerivedStateFromError(error: unknown): State {
    return { error: error instanceof Error ? error : new Error(String(error)) };
  }

  override render(): ReactNode {
    const { error } = this.state;
    return error === null ? this.props.children : <BrokenScreen error={error} />;
  }
}

/** What browsers say when a part of the program cannot be fetched: each in its own words. */
const NOT_FETCHED = /dynamically imported|importing a module|preload/i;

function BrokenScreen({ error }: { readonly error: Error }) {
  const notFetched = NOT_FETCHED.test(error.message);
  return (
    <Page title={notFetched ? "This screen could not be fetched" : "This screen broke off"}>
      <p>
        {notFetched
          ? "The studio does not answer, or Wareboard was renewed meanwhile. Load the page again; what you have done is kept."
          : "The fault is Wareboard’s, not yours. What you have done is kept. Load the page again; if it breaks off once more, go to another screen and tell whoever looks after Wareboard what stands below."}
      </p>
      <div>
        <Button look="main" onPress={() => location.reload()}>
          Load the page again
        </Button>
      </div>
      {!notFetched && (
        <details>
          <summary>What broke</summary>
          <pre style={{ whiteSpace: "pre-wrap" }}>{error.stack ?? error.message}</pre>
        </details>
      )}
    </Page>
  );
}
