import {
  changeShelf,
  moveColumn,
  movePost,
  moveShelf,
  setLevelHeight,
  turnShelf,
} from "../../../loading/editing/edit-levels.ts";
import { levelHeights } from "../../../loading/editing/level-heights.ts";
import type { Edited } from "../../../loading/editing/open-plan.ts";
import type { Level, LoadPlan } from "../../../loading/load-plan.ts";
import type { LoadRequest } from "../../../loading/load-request.ts";
import { formatLength } from "../../../measures/length.ts";
import { ChoiceField, DownIcon, IconButton, Switch, TurnIcon, UpIcon } from "../../parts/index.ts";
import { useSettings } from "../../studio/hooks.ts";
import { useWatched } from "../../studio/watched.ts";
import { PlaceFields } from "../in-words/PlaceFields.tsx";
import { postsWords, shelvesLeft, stackKey, stackWords } from "./furniture-words.ts";
import { postsAlone } from "./posts-alone.ts";
import styles from "./Shelves.module.css";

interface LevelFieldsProps {
  readonly request: LoadRequest;
  readonly plan: LoadPlan;
  readonly level: number;
  readonly onEdit: (edited: Edited, note: string) => void;
}

const TURN_STEP_DEG = 15;

/** What can be changed of a level: its shelf, its height, where the shelf and the posts lie. */
export function LevelFields(props: LevelFieldsProps) {
  const { request, plan, level: index, onEdit } = props;
  const level = plan.levels[index] as Level;
  const kind = request.furniture.shelves.find(({ name }) => name === level.shelf);
  const there = new Set([level.shelf, ...shelvesLeft(request, plan).map(({ name }) => name)]);
  const shelves = request.furniture.shelves.filter(({ name }) => there.has(name));
  const name = `level ${index + 1}`;
  const turn = (byDeg: number) =>
    onEdit(turnShelf(request, plan, index, level.turnDeg + byDeg), `turned the shelf of ${name}`);
  return (
    <>
      {shelves.length > 1 && (
        <ChoiceField
          label="Shelf"
          options={shelves.map(({ name: id }) => ({ id, label: id }))}
          value={level.shelf}
          onChange={(shelf) => onEdit(changeShelf(request, plan, index, shelf), `changed the shelf of ${name}`)}
        />
      )}
      <HeightField {...props} />
      {kind?.shape !== "disc" && (
        <div className={styles.turn}>
          <span>The shelf is turned {Math.round(level.turnDeg)}°</span>
          <IconButton
            look="plain"
            label={`Turn the shelf ${TURN_STEP_DEG}° to the left`}
            icon={<TurnIcon />}
            onPress={() => turn(TURN_STEP_DEG)}
          />
          <IconButton
            look="plain"
            label={`Turn the shelf ${TURN_STEP_DEG}° to the right`}
            icon={
              <span className={styles.mirrored}>
                <TurnIcon />
              </span>
            }
            onPress={() => turn(-TURN_STEP_DEG)}
          />
        </div>
      )}
      <details className={styles.more}>
        <summary>Where shelf and posts lie, in numbers</summary>
        <p className={styles.soft}>The shelf’s middle, from the middle of the kiln</p>
        <PlaceFields
          of="the shelf"
          xMm={level.xMm}
          yMm={level.yMm}
          onChange={({ xMm = level.xMm, yMm = level.yMm }) =>
            onEdit(moveShelf(request, plan, index, xMm, yMm), `moved the shelf of ${name}`)
          }
        />
        <PostFields {...props} />
      </details>
    </>
  );
}

/** The heights that the posts still free can make. */
function HeightField({ request, plan, level: index, onEdit }: LevelFieldsProps) {
  const { lengthUnits } = useSettings();
  const level = plan.levels[index] as Level;
  const heights = levelHeights(request, plan, index);
  const now = level.posts.every(({ heightsMm }) => stackKey(heightsMm) === stackKey(level.posts[0]?.heightsMm ?? []))
    ? stackKey(level.posts[0]?.heightsMm ?? [])
    : "";
  const isListed = heights.some(({ heightsMm }) => stackKey(heightsMm) === now);
  const set = (to: (typeof heights)[number] | undefined) => {
    if (!to) return;
    const how = to.topMm > level.topMm ? "raised" : "lowered";
    onEdit(setLevelHeight(request, plan, index, to.heightsMm), `${how} level ${index + 1}`);
  };
  const above = heights.find(({ topMm }) => topMm > level.topMm + 0.5);
  const below = heights.findLast(({ topMm }) => topMm < level.topMm - 0.5);
  return (
    <div className={styles.height}>
      <ChoiceField
        label="Posts under it"
        options={[
          ...(isListed ? [] : [{ id: now, label: `${postsWords(level, lengthUnits)}, as it is` }]),
          ...heights.map(({ heightsMm, topMm }) => ({
            id: stackKey(heightsMm),
            label: `${stackWords(heightsMm, lengthUnits)}: ${formatLength(topMm, lengthUnits)} up`,
          })),
        ]}
        value={now}
        onChange={(id) => set(heights.find(({ heightsMm }) => stackKey(heightsMm) === id))}
      />
      <IconButton look="plain" label="Higher" icon={<UpIcon />} isDisabled={!above} onPress={() => set(above)} />
      <IconButton look="plain" label="Lower" icon={<DownIcon />} isDisabled={!below} onPress={() => set(below)} />
    </div>
  );
}

/** Each post's place; with its column or alone. */
function PostFields({ request, plan, level: index, onEdit }: LevelFieldsProps) {
  const isAlone = useWatched(postsAlone);
  const level = plan.levels[index] as Level;
  const move = isAlone ? movePost : moveColumn;
  return (
    <>
      <Switch
        isSelected={!isAlone}
        onChange={(together) => postsAlone.set(!together)}
        hint="Posts stay one above another, as they must"
      >
        Move whole columns
      </Switch>
      {level.posts.map((post, i) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: posts have no names; they are told by their number
        <div key={i}>
          <p className={styles.soft}>Post {i + 1}</p>
          <PlaceFields
            of={`post ${i + 1}`}
            xMm={post.xMm}
            yMm={post.yMm}
            onChange={({ xMm = post.xMm, yMm = post.yMm }) =>
              onEdit(
                move(request, plan, index, i, xMm, yMm),
                isAlone ? `moved post ${i + 1} under level ${index + 1}` : "moved a column of posts",
              )
            }
          />
        </div>
      ))}
    </>
  );
}
