import { useLocation } from "wouter";
import {
  Button,
  ConesIcon,
  CopyIcon,
  InSpaceIcon,
  Menu,
  type MenuItem,
  OnIcon,
  PrintIcon,
  Sign,
} from "../parts/index.ts";
import styles from "./Editor.module.css";
import { Act } from "./EditorActions.tsx";
import type { Editor } from "./use-editor.ts";
import { factsOf } from "./words/load-facts.ts";

/** The load at a glance, in one line. */
export function LoadFacts({ editor }: { readonly editor: Editor }) {
  const { load, broken, plan } = editor;
  const facts = factsOf(editor.request, plan, load.state);
  return (
    <span className={styles.facts}>
      {facts.map((fact) => (
        <span key={fact}>{fact}</span>
      ))}
      {plan.levels.length > 0 &&
        (broken.length === 0 ? (
          <Sign kind="keeps">Keeps every rule</Sign>
        ) : (
          <Sign kind="breaks">{broken.length === 1 ? "One rule broken" : `${broken.length} rules broken`}</Sign>
        ))}
    </span>
  );
}

/** What can be left to the planner. */
export function planChoices({ load, planning, plan, isFixed }: Editor): MenuItem[] {
  const cannot = isFixed || planning.running;
  const hasPieces = plan.levels.some(({ placements }) => placements.length > 0);
  const pinned = load.pins.length;
  return [
    {
      id: "all",
      label: "Pack the rest round what stands",
      onPress: () => planning.plan("all"),
      isDisabled: cannot || !hasPieces,
    },
    {
      id: "pinned",
      label: pinned === 1 ? "Plan the rest round the one pinned" : `Plan the rest round the ${pinned} pinned`,
      onPress: () => planning.plan("pinned"),
      isDisabled: cannot || pinned === 0,
    },
    { id: "nothing", label: "Plan it anew", onPress: () => planning.plan("nothing"), isDisabled: cannot },
  ];
}

interface BarProps {
  readonly editor: Editor;
  readonly isNarrow: boolean;
  readonly onSheet: () => void;
}

/** Planning, and the ways this load can be looked at. */
export function BarActions({ editor, isNarrow, onSheet }: BarProps) {
  const { load, planning, plan } = editor;
  const [, go] = useLocation();
  const hasPieces = plan.levels.some(({ placements }) => placements.length > 0);
  const planItems = planChoices(editor);
  const shown = isNarrow ? 0 : 2;
  const views = [
    { id: "sheet", label: "Sheet", name: "The sheet to carry to the kiln", icon: <PrintIcon />, run: onSheet },
    {
      id: "in-space",
      label: "In space",
      name: "See it in space",
      icon: <InSpaceIcon />,
      run: () => go(`/loads/${load.id}/in-space`),
    },
    {
      id: "at-the-kiln",
      label: "At the kiln",
      name: "Tick it off at the kiln",
      icon: <OnIcon />,
      run: () => go(`/loads/${load.id}/at-the-kiln`),
    },
    {
      id: "prepare-firing",
      label: "Prepare the firing",
      name: "Prepare the firing of this load",
      icon: <ConesIcon />,
      run: () => go(`/firings/new?load=${encodeURIComponent(load.id)}`),
    },
    {
      id: "other-ways",
      label: "Other ways",
      name: "Other ways to load the same",
      icon: <CopyIcon />,
      run: () => go(`/loads/compare/${load.id}`),
    },
  ];
  return (
    <>
      {views.slice(0, shown).map(({ id, label, icon, run }) => (
        <Button key={id} look="quiet" icon={icon} onPress={run} isDisabled={!hasPieces}>
          {label}
        </Button>
      ))}
      {!isNarrow && (
        <Menu label="Plan" look="main" items={planItems}>
          Plan
        </Menu>
      )}
      <Menu
        label="More for this load"
        items={views.slice(shown).map(({ id, name, icon, run }) => ({
          id,
          label: name,
          icon,
          onPress: run,
          isDisabled: id !== "other-ways" && !hasPieces,
        }))}
      />
      {planItems.map(({ id, label, onPress, isDisabled }) => (
        <Act key={id} id={`load.plan.${id}`} name={label} run={onPress} isEnabled={!isDisabled} />
      ))}
      {views.map(({ id, name, run }) => (
        <Act key={id} id={`load.${id}`} name={name} run={run} isEnabled={id === "other-ways" || hasPieces} />
      ))}
      <Act id="load.stop-planning" name="Enough planning" run={() => planning.stop()} isEnabled={planning.running} />
    </>
  );
}
