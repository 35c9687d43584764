import { useParams } from "wouter";
import type { FiringRecord } from "../../studio/records/firing-record.ts";
import { NothingHere, Spinner } from "../parts/index.ts";
import { useFiring, useLoads, useWare } from "../studio/hooks.ts";
import { Unloading } from "./Unloading.tsx";
import type { PlannedLoad } from "./use-unloading.ts";
import { WithoutPlaces } from "./WithoutPlaces.tsx";

/** A fired kiln, shelf by shelf and piece by piece, as it is unpacked. */
export default function UnloadScreen() {
  const { id = "" } = useParams<{ id: string }>();
  const firing = useFiring(id);
  const loads = useLoads();
  const ware = useWare();
  if (firing === undefined || loads === undefined || ware === undefined) {
    return <Spinner words="Looking for the firing" />;
  }
  if (firing === null) {
    return (
      <NothingHere
        title="Unload"
        back={{ href: "/firings", label: "All firings" }}
        heading="This firing is not here"
        words="It may have been taken out, or this device has not seen it yet: open it once while the studio answers."
      />
    );
  }
  const back = { href: `/firings/${id}`, label: "The firing" };
  if (firing.state === "planned" || firing.state === "firing") return <NotYet firing={firing} back={back} />;
  const load = loads.find((each) => each.id === firing.loadId);
  return load && isPlanned(load) ? (
    <Unloading key={firing.id} firing={firing} record={load} ware={ware} back={back} />
  ) : (
    <WithoutPlaces firing={firing} back={back} />
  );
}

export interface Back {
  readonly href: string;
  readonly label: string;
}

function NotYet({ firing, back }: { readonly firing: FiringRecord; readonly back: Back }) {
  const isFiring = firing.state === "firing";
  return (
    <NothingHere
      title={firing.name}
      back={isFiring ? { href: `/firings/${firing.id}/watch`, label: "Watch it" } : back}
      heading={isFiring ? "It still fires" : "It has not been fired yet"}
      words={
        isFiring
          ? "Once the elements are off, write the shut-off down; what came out is told here when the kiln has cooled."
          : "When it has fired and cooled, you tell here what came out, shelf by shelf."
      }
    />
  );
}

const isPlanned = (record: { readonly plan: PlannedLoad["plan"] | null }): record is PlannedLoad =>
  record.plan !== null && record.plan.levels.length > 0;
