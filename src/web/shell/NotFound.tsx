import { Button } from "../parts/Button.tsx";
import { Empty } from "../parts/Empty.tsx";
import { Page } from "../parts/Page.tsx";

/** An address nothing is at. */
export const NotFound = () => (
  <Page title="Nothing stands here">
    <Empty
      title="No such place in the studio"
      words="The address may be mistyped, or what it led to was taken out."
      action={
        <Button look="main" href="/">
          See what waits
        </Button>
      }
    />
  </Page>
);
