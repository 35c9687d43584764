import { useParams } from "wouter";
import { Button, Empty, NothingHere, Page, Spinner } from "../parts/index.ts";
import { useLoad } from "../studio/hooks.ts";
import { KilnWalk } from "./KilnWalk.tsx";
import type { PlannedLoad } from "./use-walk.ts";

/** The loading order on a phone at the kiln, one thing at a time. */
export default function AtTheKilnScreen() {
  const { id = "" } = useParams<{ id: string }>();
  const record = useLoad(id);
  if (record === undefined) return <Spinner words="Looking for the load" />;
  const back = { href: `/loads/${id}`, label: "The load" };
  if (record === null) {
    return (
      <NothingHere
        title="At the kiln"
        back={{ href: "/loads", label: "All loads" }}
        heading="This load is not here"
        words="It may have been removed, or this device has not seen it yet: open it once while the studio answers."
      />
    );
  }
  if (!isPlanned(record)) {
    return (
      <Page title={record.name} back={back}>
        <Empty
          title="Nothing is planned yet"
          words="Plan the load first; then this walks you through it, piece by piece, from the floor up."
          action={<Button href={`/loads/${id}`}>Open the load</Button>}
        />
      </Page>
    );
  }
  return <KilnWalk key={record.id} record={record} back={back} />;
}

const isPlanned = (record: { readonly plan: PlannedLoad["plan"] | null }): record is PlannedLoad =>
  record.plan !== null && record.plan.levels.length > 0;
