import { useMemo } from "react";
import { Page, Spinner } from "../parts/index.ts";
import { useClayBodies, useGlazes, useWare } from "../studio/hooks.ts";
import { MaterialList } from "./MaterialList.tsx";
import styles from "./Materials.module.css";

/** Clay bodies and glazes. */
export default function MaterialsScreen() {
  const clayBodies = useClayBodies();
  const glazes = useGlazes();
  const ware = useWare();
  const uses = useMemo(() => {
    const counts = new Map<string, number>();
    for (const { clayBodyId, glazeId } of ware ?? []) {
      for (const id of [clayBodyId, glazeId]) if (id !== null) counts.set(id, (counts.get(id) ?? 0) + 1);
    }
    return counts;
  }, [ware]);
  return (
    <Page title="Clay and glazes" undoScope="materials" back={{ href: "/settings", label: "Back to the studio" }}>
      {clayBodies && glazes && ware ? (
        <div className={styles.both}>
          <MaterialList kind="clayBodies" materials={clayBodies} uses={uses} />
          <MaterialList kind="glazes" materials={glazes} uses={uses} />
        </div>
      ) : (
        <Spinner />
      )}
    </Page>
  );
}
