import { AddIcon, IconButton, RemoveIcon } from "../../parts/index.ts";
import type { Zoom } from "./use-zoom.ts";
import styles from "./Zoom.module.css";

/** Nearer, farther, all of it: laid over a corner of the drawing. */
export function ZoomButtons({ zoom }: { readonly zoom: Zoom }) {
  return (
    <div className={styles.buttons}>
      {zoom.isZoomed && (
        <>
          <IconButton look="plain" label="Show all of it" icon={<FitIcon />} onPress={zoom.fit} />
          <IconButton look="plain" label="Farther" icon={<RemoveIcon />} onPress={zoom.zoomOut} />
        </>
      )}
      <IconButton look="plain" label="Nearer" icon={<AddIcon />} onPress={zoom.zoomIn} />
    </div>
  );
}

const FitIcon = () => (
  <svg
    width="24"
    height="24"
    viewBox="0 0 24 24"
    fill="none"
    stroke="currentColor"
    strokeWidth="1.8"
    aria-hidden="true"
  >
    <path strokeLinecap="round" strokeLinejoin="round" d="M4 9V4h5M15 4h5v5M20 15v5h-5M9 20H4v-5" />
  </svg>
);
