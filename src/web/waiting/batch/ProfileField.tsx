import { AddIcon, BinIcon, Button, ChoiceField, IconButton, LengthField } from "../../parts/index.ts";
import styles from "./BatchFields.module.css";
import { type BatchDraft, outlineOf } from "./batch-draft.ts";

type Points = readonly (readonly [heightMm: number, radiusMm: number])[];

export interface ProfileFieldProps {
  readonly draft: BatchDraft;
  readonly change: (part: Pick<BatchDraft, "profile">) => void;
}

/** Her own profile: how wide the piece is at what height, foot to rim. */
export function ProfileField({ draft, change }: ProfileFieldProps) {
  const { profile } = draft;
  const outline = outlineOf(draft);
  const points = profile === "by-form" ? null : profile;
  const set = (next: Points): void => change({ profile: next });
  const first = (): Points => {
    const height = draft.heightMm ?? 100;
    const radius = (draft.acrossMm ?? 100) / 2;
    return (
      outline?.profile ?? [
        [0, radius],
        [height, radius],
      ]
    );
  };
  return (
    <div className={styles.section}>
      <ChoiceField
        label="Its side"
        hint="The rules measure it; the planner keeps clear of the widest place all the way up."
        look="row"
        options={[
          { id: "plain", label: "Straight" },
          { id: "by-form", label: "The form's curve" },
          { id: "own", label: "Measured" },
        ]}
        value={profile === null ? "plain" : profile === "by-form" ? "by-form" : "own"}
        onChange={(how) => change({ profile: how === "plain" ? null : how === "by-form" ? how : first() })}
      />
      {points && (
        <>
          {points.map(([up, out], i) => (
            // biome-ignore lint/suspicious/noArrayIndexKey: a point has no name but its place.
            <div key={i} className={styles.points}>
              <LengthField
                label={i === 0 ? "At height (foot)" : i === points.length - 1 ? "At height (rim)" : "At height"}
                valueMm={up}
                isDisabled={i === 0}
                onChange={(mm) => mm !== null && set(points.with(i, [mm, out]))}
              />
              <LengthField
                label="Wide there"
                valueMm={2 * out}
                onChange={(mm) => mm !== null && set(points.with(i, [up, mm / 2]))}
              />
              <IconButton
                label="Take this measure out"
                icon={<BinIcon />}
                isDisabled={points.length <= 2 || i === 0}
                onPress={() => set(points.filter((_, at) => at !== i))}
              />
            </div>
          ))}
          <Button look="quiet" icon={<AddIcon />} onPress={() => set(withAnother(points))}>
            Another height
          </Button>
        </>
      )}
    </div>
  );
}

/** A point more, halfway up the longest stretch without one. */
function withAnother(points: Points): Points {
  const stretches = points.slice(1).map(([up], i) => up - (points[i]?.[0] ?? 0));
  const longest = stretches.indexOf(Math.max(...stretches));
  const [lowUp, lowOut] = points[longest] ?? [0, 0];
  const [highUp, highOut] = points[longest + 1] ?? [0, 0];
  return points.toSpliced(longest + 1, 0, [(lowUp + highUp) / 2, (lowOut + highOut) / 2]);
}
