import { useParams } from "wouter";
import { NothingHere, Spinner } from "../parts/index.ts";
import { useLoad } from "../studio/hooks.ts";
import { EditorPage } from "./EditorPage.tsx";

/** One load: its levels to be seen and changed. */
export default function LoadEditorScreen() {
  const { id = "" } = useParams<{ id: string }>();
  const load = useLoad(id);
  if (load === undefined) return <Spinner words="One moment" />;
  if (load === null) {
    return (
      <NothingHere
        title="Load"
        back={{ href: "/loads", label: "All loads" }}
        heading="This load is gone"
        words="It was taken out meanwhile."
      />
    );
  }
  // Another load is another editor: what was chosen and held in one means nothing in the other.
  return <EditorPage key={load.id} load={load} />;
}
