import { lazy, Suspense, useCallback, useId, useMemo, useState } from "react";
import { useParams } from "wouter";
import { sceneOf } from "../../loading/checker/scene.ts";
import type { LoadPlan } from "../../loading/load-plan.ts";
import type { LoadRequest } from "../../loading/load-request.ts";
import type { LoadRecord } from "../../studio/records/load-record.ts";
import { wholeLoad } from "../loads/whole-load.ts";
import { Button, Empty, Page, Spinner } from "../parts/index.ts";
import { useLoad } from "../studio/hooks.ts";
import { canDrawInSpace } from "./can-draw.ts";
import styles from "./InSpace.module.css";
import { LevelsInWords } from "./LevelsInWords.tsx";
import type { PiecePlace } from "./load-in-space.ts";

// The drawing in space is large: it comes when this screen is asked for, and only where the browser can draw it.
const SpaceCanvas = lazy(() => import("./SpaceCanvas.tsx"));

/** A load in space, to be turned and looked through. */
export default function InSpaceScreen() {
  const { id = "" } = useParams<{ id: string }>();
  const load = useLoad(id);
  if (load === undefined) return <Spinner />;
  if (load === null) {
    return (
      <Page title="In space">
        <Empty
          title="This load is gone"
          words="It was taken out meanwhile."
          action={<Button href="/loads">All loads</Button>}
        />
      </Page>
    );
  }
  const { request, plan } = wholeLoad(load);
  if (plan === null || plan.levels.length === 0) {
    return (
      <Page title={`${load.name}, in space`}>
        <Empty
          title="Nothing stands in it yet"
          words="Plan the load first, or put pieces in by hand. Then it can be looked at from all around."
          action={<Button href={`/loads/${id}`}>To the load</Button>}
        />
      </Page>
    );
  }
  return <LoadInSpace key={load.id} load={load} request={request} plan={plan} />;
}

function LoadInSpace({ load, request, plan }: { load: LoadRecord; request: LoadRequest; plan: LoadPlan }) {
  const scene = useMemo(() => sceneOf(request, plan), [request, plan]);
  const [draws, setDraws] = useState(canDrawInSpace);
  const cannot = useCallback(() => setDraws(false), []);
  const [liftPercent, setLiftPercent] = useState(0);
  const [chosen, setChosen] = useState<PiecePlace | null>(null);
  const handsId = useId();
  const liftId = useId();
  const pieces = scene.pieces.length;
  const chosenName = chosen && plan.levels[chosen.level]?.placements[chosen.placement]?.ware;
  const said = chosen && chosenName ? `${chosenName}, level ${chosen.level + 1}` : "Press a piece to see what it is.";

  return (
    <Page title={`${load.name}, in space`} back={{ href: `/loads/${load.id}`, label: "Back to the drawings" }}>
      <div className={styles.screen}>
        <section className={styles.stage} aria-label="The kiln in space">
          {draws ? (
            <>
              <div className={styles.frame}>
                <Suspense fallback={<Spinner />}>
                  <SpaceCanvas
                    scene={scene}
                    label={`The kiln with ${pieces} pieces on ${plan.levels.length} levels, to be turned. What stands where is told beside it.`}
                    describedBy={handsId}
                    liftShare={liftPercent / 100}
                    chosen={chosen}
                    onChoose={setChosen}
                    onTrouble={cannot}
                  />
                </Suspense>
              </div>
              <p className={styles.said} aria-live="polite">
                {said}
              </p>
              <div className={styles.lift}>
                <label htmlFor={liftId}>Lift the shelves apart</label>
                <input
                  id={liftId}
                  type="range"
                  min={0}
                  max={100}
                  value={liftPercent}
                  onChange={(event) => setLiftPercent(event.currentTarget.valueAsNumber)}
                />
              </div>
              <p id={handsId} className={styles.hands}>
                Drag to turn, two fingers or the wheel to come nearer. With keys: arrows turn, + and − come nearer and
                go back, Home looks from the front.
              </p>
            </>
          ) : (
            <div className={styles.cannot}>
              <p>
                This browser does not draw in space: it has no WebGL, or it is switched off. Everything is in the
                drawings too.
              </p>
              <Button href={`/loads/${load.id}`}>To the drawings</Button>
            </div>
          )}
        </section>
        <LevelsInWords request={request} plan={plan} chosen={chosen} onChoose={setChosen} />
      </div>
    </Page>
  );
}
