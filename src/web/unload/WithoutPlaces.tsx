import type { FiringRecord } from "../../studio/records/firing-record.ts";
import { Page } from "../parts/index.ts";
import { OpeningPart } from "./opening/OpeningPart.tsx";

interface WithoutPlacesProps {
  readonly firing: FiringRecord;
  readonly back: { readonly href: string; readonly label: string };
}

/** A firing whose pieces have no places: what can still be told of it. */
export function WithoutPlaces({ firing, back }: WithoutPlacesProps) {
  return (
    <Page title={firing.name} back={back} undoScope={`firing:${firing.id}`}>
      <p>
        This firing was made without a planned load, so there are no shelves to go through. When it was opened and what
        the meter showed can still be kept.
      </p>
      <OpeningPart firing={firing} />
    </Page>
  );
}
