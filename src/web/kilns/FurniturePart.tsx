import { useMemo } from "react";
import type { Post, Shelf } from "../../kiln/furniture.ts";
import { GLAZE_WARE_RULES } from "../../loading/clearance-rules.ts";
import {
  AddIcon,
  BinIcon,
  Button,
  ChoiceField,
  IconButton,
  LengthField,
  NumberField,
  Sign,
  TextField,
} from "../parts/index.ts";
import { PostsRow } from "./drawing/PostsRow.tsx";
import { ShelfPicture } from "./drawing/ShelfPicture.tsx";
import { type PartProps, withOne } from "./editing.ts";
import fields from "./Fields.module.css";
import { freeName, reshaped } from "./kiln-draft.ts";
import { fitWords } from "./kiln-words.ts";
import styles from "./Parts.module.css";
import { shelfFit } from "./shelf-fit.ts";

/** Shelves and posts: how many of which, and whether they go in. */
export function FurniturePart(props: PartProps) {
  const { draft, units, change } = props;
  const { shelves, posts } = draft.furniture;
  const setShelves = (next: Shelf[]) => change((was) => ({ ...was, furniture: { ...was.furniture, shelves: next } }));
  const setPosts = (next: Post[]) => change((was) => ({ ...was, furniture: { ...was.furniture, posts: next } }));
  return (
    <div className={fields.stack}>
      <h2>Shelves</h2>
      {shelves.map((shelf, index) => (
        <ShelfFields
          // biome-ignore lint/suspicious/noArrayIndexKey: its place is its name for the errors; names change while typed
          key={index}
          {...props}
          shelf={shelf}
          path={`furniture.shelves[${index}]`}
          set={(next) => setShelves(withOne(shelves, index, () => next))}
          isLast={shelves.length === 1}
        />
      ))}
      <div>
        <Button
          icon={<AddIcon />}
          onPress={() => {
            const like = shelves.at(-1);
            if (like) setShelves([...shelves, { ...like, name: freeName(like.name, shelves), count: 1 }]);
          }}
        >
          Add another kind of shelf
        </Button>
      </div>
      <h2>Posts</h2>
      <PostsRow posts={posts} units={units} />
      <ul className={styles.posts}>
        {posts.map((post, index) => (
          <PostFields
            // biome-ignore lint/suspicious/noArrayIndexKey: two kinds of post may be alike in every measure
            key={index}
            {...props}
            post={post}
            path={`furniture.posts[${index}]`}
            set={(next) => setPosts(withOne(posts, index, () => next))}
            isLast={posts.length === 1}
          />
        ))}
      </ul>
      <div>
        <Button
          icon={<AddIcon />}
          onPress={() => {
            const tallest = Math.max(...posts.map(({ heightMm }) => heightMm));
            const like = posts.at(-1);
            if (like) setPosts([...posts, { ...like, heightMm: tallest + 25, count: 3 }]);
          }}
        >
          Add another height of post
        </Button>
      </div>
    </div>
  );
}

const SHELF_SHAPES = [
  { id: "disc", label: "Round" },
  { id: "half-disc", label: "Half round" },
  { id: "polygon", label: "Many-sided" },
  { id: "rectangle", label: "Square or long" },
] as const;

const SIGN = { fits: "keeps", near: "mind", cannot: "breaks" } as const;

interface ShelfFieldsProps extends PartProps {
  readonly shelf: Shelf;
  readonly path: string;
  readonly set: (shelf: Shelf | null) => void;
  readonly isLast: boolean;
}

function ShelfFields({ draft, units, shelf, path, set, isLast, problemAt }: ShelfFieldsProps) {
  const { chamber } = draft.kiln;
  const wallMm = draft.rules.shelfWallMm ?? GLAZE_WARE_RULES.shelfWallMm;
  const fit = useMemo(() => shelfFit(chamber, shelf), [chamber, shelf]);
  const { words, verdict } = fitWords(fit, shelf, wallMm, units);
  const length = (field: string, label: string, valueMm: number) => (
    <LengthField
      label={label}
      valueMm={valueMm}
      problem={problemAt(`${path}.${field}`)}
      onChange={(mm) => mm !== null && set({ ...shelf, [field]: mm } as Shelf)}
    />
  );
  return (
    <fieldset className={`${styles.block} ${styles.shelf}`}>
      <legend className="heard">{shelf.name || "shelf"}</legend>
      <ShelfPicture kiln={draft.kiln} shelf={shelf} fit={fit} verdict={verdict} />
      <div className={styles.shelfWords}>
        <div className={styles.blockHead}>
          <TextField
            label="Name"
            value={shelf.name}
            maxLength={120}
            onChange={(name) => set({ ...shelf, name })}
            problem={problemAt(`${path}.name`)}
          />
          <IconButton
            label={`Remove ${shelf.name || "this shelf"}`}
            icon={<BinIcon />}
            isDisabled={isLast}
            onPress={() => set(null)}
          />
        </div>
        <div className={fields.row}>
          <ChoiceField
            label="Shape"
            options={SHELF_SHAPES}
            value={shelf.shape}
            onChange={(shape) => set(reshaped(shelf, shape))}
          />
          {(shelf.shape === "disc" || shelf.shape === "half-disc") &&
            length("diameterMm", shelf.shape === "disc" ? "Across" : "Along its straight side", shelf.diameterMm)}
          {shelf.shape === "polygon" && (
            <>
              <NumberField
                label="Sides"
                value={shelf.sides}
                min={3}
                max={24}
                problem={problemAt(`${path}.sides`)}
                onChange={(sides) => sides !== null && set({ ...shelf, sides })}
              />
              {length("acrossFlatsMm", "Across, flat to flat", shelf.acrossFlatsMm)}
            </>
          )}
          {shelf.shape === "rectangle" && (
            <>
              {length("widthMm", "Wide", shelf.widthMm)}
              {length("lengthMm", "Deep", shelf.lengthMm)}
            </>
          )}
          {length("thicknessMm", "Thick", shelf.thicknessMm)}
          <NumberField
            label="How many"
            value={shelf.count}
            min={0}
            max={999}
            hasSteps
            problem={problemAt(`${path}.count`)}
            onChange={(count) => count !== null && set({ ...shelf, count })}
          />
        </div>
        <Sign kind={SIGN[verdict]}>{words}</Sign>
      </div>
    </fieldset>
  );
}

const POST_SHAPES = [
  { id: "square", label: "Square" },
  { id: "round", label: "Round" },
] as const;

interface PostFieldsProps extends PartProps {
  readonly post: Post;
  readonly path: string;
  readonly set: (post: Post | null) => void;
  readonly isLast: boolean;
}

function PostFields({ post, path, set, isLast, problemAt }: PostFieldsProps) {
  return (
    <li className={styles.post}>
      <LengthField
        label="Height"
        valueMm={post.heightMm}
        problem={problemAt(`${path}.heightMm`)}
        onChange={(heightMm) => heightMm !== null && set({ ...post, heightMm })}
      />
      <LengthField
        label="Width"
        valueMm={post.widthMm}
        problem={problemAt(`${path}.widthMm`)}
        onChange={(widthMm) => widthMm !== null && set({ ...post, widthMm })}
      />
      <ChoiceField
        label="Shape"
        options={POST_SHAPES}
        value={post.shape}
        onChange={(shape) => set({ ...post, shape })}
      />
      <NumberField
        label="How many"
        value={post.count}
        min={0}
        max={999}
        hasSteps
        problem={problemAt(`${path}.count`)}
        onChange={(count) => count !== null && set({ ...post, count })}
      />
      <IconButton label="Remove these posts" icon={<BinIcon />} isDisabled={isLast} onPress={() => set(null)} />
    </li>
  );
}
