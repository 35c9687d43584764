import { useState } from "react";
import { usePhotos } from "../studio/hooks.ts";
import styles from "./KilnWalk.module.css";

/** The newest picture of a batch, where there is one and it can be had. */
export function PiecePhoto({ wareId, name }: { readonly wareId: string; readonly name: string }) {
  const photo = usePhotos("ware", wareId)?.at(-1);
  const [missing, setMissing] = useState<string | null>(null);
  if (!photo || missing === photo.id) return null;
  const picture = `/api/photos/${encodeURIComponent(photo.id)}/picture`;
  return (
    <img className={styles.photo} src={picture} alt={photo.caption || name} onError={() => setMissing(photo.id)} />
  );
}
