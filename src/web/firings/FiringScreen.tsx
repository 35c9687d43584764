import { lazy, Suspense } from "react";
import { useParams } from "wouter";
import { NothingHere, Spinner } from "../parts/index.ts";
import { useFiring } from "../studio/hooks.ts";
import { BeginPreparing } from "./prepare/BeginPreparing.tsx";

const Preparing = lazy(() => import("./prepare/Preparing.tsx"));
const FiringSummary = lazy(() => import("./after/FiringSummary.tsx"));

/** One firing: being prepared, or what came of it. "new" begins one for a load. */
export default function FiringScreen() {
  const { id } = useParams<{ id: string }>();
  return id === "new" ? <BeginPreparing /> : <OneFiring id={id} />;
}

function OneFiring({ id }: { readonly id: string }) {
  const firing = useFiring(id);
  if (firing === undefined) return <Spinner />;
  if (firing === null) {
    return (
      <NothingHere
        title="Firing"
        back={{ href: "/firings", label: "To the firings" }}
        heading="That firing is not here"
        words="It was taken out, or the address is of another studio."
      />
    );
  }
  return (
    <Suspense fallback={<Spinner />}>
      {firing.state === "planned" ? <Preparing firing={firing} /> : <FiringSummary firing={firing} />}
    </Suspense>
  );
}
