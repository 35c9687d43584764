import { Button, Problem, Spinner, StopIcon } from "../parts/index.ts";
import styles from "./Editor.module.css";
import type { Editor } from "./use-editor.ts";

/** How the planning of this load stands, and what can be done about it; nothing where nothing is being planned. */
export function PlanningLine({ editor }: { readonly editor: Editor }) {
  const { planning } = editor;
  if (planning.running) {
    return (
      <div className={styles.notice} role="status">
        <Spinner isSmall />
        <span className={styles.noticeWords}>
          {planning.livePlan === null
            ? "Looking for a plan"
            : `${planning.pieces} pieces so far, worth ${planning.value}. Looking for better.`}
        </span>
        <Button icon={<StopIcon />} onPress={() => planning.stop()}>
          Enough
        </Button>
      </div>
    );
  }
  if (planning.problem === null) return null;
  return (
    <div className={styles.notice}>
      <Problem error={planning.problem} />
      {planning.canKeep && (
        <Button look="main" onPress={() => void planning.keepAnyway()}>
          Keep this plan
        </Button>
      )}
      <Button onPress={() => planning.letGo()}>{planning.canKeep ? "Let it go" : "All right"}</Button>
    </div>
  );
}
