import { useParams } from "wouter";
import { Button, Empty, NothingHere, Page, Spinner } from "../parts/index.ts";
import { useFiring } from "../studio/hooks.ts";
import { Watching } from "./Watching.tsx";

const BACK = { href: "/firings", label: "To the firings" };

/** A firing as it goes on. */
export default function WatchScreen() {
  const { id } = useParams<{ id: string }>();
  const firing = useFiring(id);
  if (firing === undefined) return <Spinner />;
  if (firing === null) {
    return (
      <NothingHere
        title="Watch"
        back={BACK}
        heading="That firing is not here"
        words="It was taken out, or the address is of another studio."
      />
    );
  }
  if (firing.state === "planned") {
    return (
      <Page title={firing.name} back={BACK}>
        <Empty
          title="It has not begun"
          words="Once you have switched the kiln on and said so, it is watched here."
          action={<Button href={`/firings/${firing.id}`}>To its preparation</Button>}
        />
      </Page>
    );
  }
  return <Watching key={firing.id} firing={firing} />;
}
