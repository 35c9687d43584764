import { type ChangeEvent, useRef, useState } from "react";
import type { PhotoRecord } from "../../../studio/records/note-and-photo-records.ts";
import {
  BinIcon,
  Button,
  IconButton,
  PhotoIcon,
  Problem,
  TextField,
  tell,
  UndoIcon,
  wordsOf,
} from "../../parts/index.ts";
import { useCommand, usePhotos, useUndo } from "../../studio/hooks.ts";
import { addPhoto } from "./add-photo.ts";
import styles from "./PhotosOfBatch.module.css";

export interface PhotosOfBatchProps {
  readonly wareId: string;
  readonly name: string;
}

/** The photos of a batch: take one or choose one, say what it shows, take it out. */
export function PhotosOfBatch({ wareId, name }: PhotosOfBatchProps) {
  const photos = usePhotos("ware", wareId) ?? [];
  const input = useRef<HTMLInputElement>(null);
  const [isBusy, setBusy] = useState(false);
  const [problem, setProblem] = useState<unknown>(null);
  const [removed, setRemoved] = useState(0);
  const { undo } = useUndo("photos");
  const chosen = async (event: ChangeEvent<HTMLInputElement>) => {
    const files = [...(event.target.files ?? [])];
    event.target.value = "";
    setBusy(true);
    setProblem(null);
    try {
      for (const file of files) await addPhoto("ware", wareId, file);
    } catch (error) {
      setProblem(error);
    }
    setBusy(false);
  };
  return (
    <section className={styles.photos} aria-label={`Photos of ${name}`}>
      {photos.map((photo) => (
        <OnePhoto key={photo.id} photo={photo} name={name} onRemoved={() => setRemoved(removed + 1)} />
      ))}
      <Problem error={problem} />
      {removed > 0 && (
        <Button
          look="quiet"
          icon={<UndoIcon />}
          onPress={() => {
            setRemoved(removed - 1);
            undo().catch(setProblem);
          }}
        >
          Put the photo back
        </Button>
      )}
      <Button icon={<PhotoIcon />} isBusy={isBusy} onPress={() => input.current?.click()}>
        {photos.length === 0 ? "Add a photo" : "Another photo"}
      </Button>
      <input ref={input} type="file" accept="image/*" hidden multiple onChange={chosen} aria-label="Photo" />
    </section>
  );
}

interface OnePhotoProps {
  readonly photo: PhotoRecord;
  readonly name: string;
  readonly onRemoved: () => void;
}

function OnePhoto({ photo, name, onRemoved }: OnePhotoProps) {
  const command = useCommand();
  const [caption, setCaption] = useState(photo.caption);
  const keepCaption = () => {
    if (caption.trim() === photo.caption) return;
    command("change-photo", { id: photo.id, caption: caption.trim() }, (cache) =>
      cache.patch("photos", photo.id, (before) => ({ ...before, caption: caption.trim() })),
    ).catch((error: unknown) => tell(wordsOf(error)));
  };
  const remove = () => {
    onRemoved();
    command("remove-photo", { id: photo.id }, (cache) => cache.remove("photos", photo.id)).catch((error: unknown) =>
      tell(wordsOf(error)),
    );
  };
  const address = `/api/photos/${photo.id}/picture`;
  return (
    <figure className={styles.photo}>
      <a href={address} target="_blank" rel="noreferrer">
        <img src={address} alt={photo.caption || `Photo of ${name}`} loading="lazy" />
      </a>
      <figcaption className={styles.caption}>
        <TextField
          label="What it shows"
          isLabelHidden
          placeholder="What it shows"
          value={caption}
          maxLength={2000}
          onChange={setCaption}
          onBlur={keepCaption}
        />
        <IconButton label="Remove the photo" icon={<BinIcon />} onPress={remove} />
      </figcaption>
    </figure>
  );
}
