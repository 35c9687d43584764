import { useParams } from "wouter";
import { Button, Empty, Page, Spinner } from "../parts/index.ts";
import { useLoad } from "../studio/hooks.ts";
import { EditorPage } from "./EditorPage.tsx";

/** One load: its levels to be seen and changed. */
export default function LoadEditorScreen() {
  const { id = "" } = useParams<{ id: string }>();
  const load = useLoad(id);
  if (load === undefined) return <Spinner words="One moment" />;
  if (load === null) {
    return (
      <Page title="Load" back={{ href: "/loads", label: "All loads" }}>
        <Empty
          title="This load is gone"
          words="It was taken out meanwhile."
          action={<Button href="/loads">All loads</Button>}
        />
      </Page>
    );
  }
  // Another load is another editor: what was chosen and held in one means nothing in the other.
  return <EditorPage key={load.id} load={load} />;
}
