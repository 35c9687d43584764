import { useLocation } from "wouter";
import type { FiringRecord } from "../../../studio/records/firing-record.ts";
import type { LoadRecord } from "../../../studio/records/load-record.ts";
import { AddIcon, Button, Menu } from "../../parts/index.ts";
import { loadsToFire } from "./loads-to-fire.ts";

interface PrepareMenuProps {
  readonly loads: readonly LoadRecord[];
  readonly firings: readonly FiringRecord[];
}

/** Begins a firing with one of the loads that wait for theirs. */
export function PrepareMenu({ loads, firings }: PrepareMenuProps) {
  const [, go] = useLocation();
  const waiting = loadsToFire(loads, firings);
  if (waiting.length === 0) return <Button href="/loads">A load first</Button>;
  return (
    <Menu
      label="Prepare a firing"
      look="main"
      icon={<AddIcon />}
      items={waiting.map(({ id, name }) => ({
        id,
        label: name,
        onPress: () => go(`/firings/new?load=${encodeURIComponent(id)}`),
      }))}
    >
      Prepare a firing
    </Menu>
  );
}
