import { type ChangeEvent, useEffect, useRef, useState } from "react";
import { Button, PhotoIcon, Problem } from "../../parts/index.ts";
import { usePhotos } from "../../studio/hooks.ts";
import { useWatched } from "../../studio/watched.ts";
import { downscaled } from "../../waiting/photos/downscale.ts";
import type { FiredPiece } from "../judging/pieces.ts";
import { sendLater, waitingSends } from "../waiting/waiting-sends.ts";
import styles from "./PhotosOfPiece.module.css";
import { captionOf, isOfPiece } from "./piece-caption.ts";

interface PhotosOfPieceProps {
  readonly firingId: string;
  readonly piece: FiredPiece;
}

/** What a piece looked like as it came out: kept on this device at once, sent when the studio answers. */
export function PhotosOfPiece({ firingId, piece }: PhotosOfPieceProps) {
  const photos = (usePhotos("firings", firingId) ?? []).filter(({ caption }) => isOfPiece(caption, piece));
  const caption = captionOf(piece);
  const path = `/photos?${new URLSearchParams({ aboutKind: "firings", aboutId: firingId, caption })}`;
  const waiting = useWatched(waitingSends).filter((each) => each.path === path);
  const input = useRef<HTMLInputElement>(null);
  const [isBusy, setBusy] = useState(false);
  const [problem, setProblem] = useState<unknown>(null);
  const chosen = async (event: ChangeEvent<HTMLInputElement>) => {
    const files = [...(event.target.files ?? [])];
    event.target.value = "";
    setBusy(true);
    setProblem(null);
    try {
      for (const file of files)
        await sendLater({ path, about: `The photo of ${piece.name}`, picture: await downscaled(file) });
    } catch (error) {
      setProblem(error);
    }
    setBusy(false);
  };
  const count = photos.length + waiting.length;
  return (
    <div className={styles.photos}>
      {photos.map(({ id }, i) => (
        <a key={id} href={`/api/photos/${id}/picture`} target="_blank" rel="noreferrer">
          <img
            className={styles.photo}
            src={`/api/photos/${id}/picture`}
            alt={`${piece.name} as it came out, ${i + 1}`}
          />
        </a>
      ))}
      {waiting.map(({ key, picture }) => picture && <WaitingPhoto key={key} picture={picture} name={piece.name} />)}
      <Button icon={<PhotoIcon />} isBusy={isBusy} onPress={() => input.current?.click()}>
        {count === 0 ? "Photo" : "Another photo"}
      </Button>
      <input ref={input} type="file" accept="image/*" hidden multiple onChange={chosen} aria-label="Photo" />
      <Problem error={problem} />
    </div>
  );
}

function WaitingPhoto({ picture, name }: { readonly picture: Blob; readonly name: string }) {
  const [address, setAddress] = useState<string | null>(null);
  useEffect(() => {
    const made = URL.createObjectURL(picture);
    setAddress(made);
    return () => URL.revokeObjectURL(made);
  }, [picture]);
  if (address === null) return null;
  return <img className={styles.photo} src={address} alt={`${name}, not sent yet`} />;
}
