import { useId } from "react";
import type { KilnFile } from "../../../kiln/kiln.ts";
import { HEIGHTS, type Height, type KilnMaps } from "../../../studio/firings/kiln-maps.ts";
import { DownIcon, UpIcon } from "../../parts/index.ts";
import { useSettings } from "../../studio/hooks.ts";
import parts from "../Learn.module.css";
import { LevelMap } from "./LevelMap.tsx";
import styles from "./Maps.module.css";
import { HEIGHT_WORDS, heatSign, heatWords, PART_WORDS, tallyWords, worstPlace } from "./map-words.ts";

/** Where in the kiln pieces were lost, and where it runs hot: its thirds from above, the top one first. */
export function MapsPart({ kiln, maps }: { readonly kiln: KilnFile; readonly maps: KilnMaps }) {
  const id = useId();
  const worst = worstPlace(maps);
  return (
    <section className={parts.part} aria-labelledby={id}>
      <h2 id={id}>Where it runs hot, where it loses</h2>
      <p>
        {tallyWords(maps.all)}
        {worst &&
          `. Most go wrong in the ${worst.height} third, ${PART_WORDS[worst.part]}: ${worst.second + worst.lost} of ${worst.pieces}.`}
      </p>
      <ul className={styles.maps}>
        {HEIGHTS.toReversed().map((height) => (
          <li key={height}>
            <Third kiln={kiln} maps={maps} height={height} />
          </li>
        ))}
      </ul>
      <p className={parts.soft}>
        From above, as you stand before it. The figure is how many pieces stood there; ✕ lost, △ seconds. Hatched: of
        four or more, over one in ten went wrong; crosshatched: over three in ten.
      </p>
      <details className={parts.more}>
        <summary>The maps in words</summary>
        <ul>
          {maps.places
            .filter(({ pieces }) => pieces > 0)
            .toReversed()
            .map((place) => (
              <li key={`${place.height} ${place.part}`}>
                {HEIGHT_WORDS[place.height]}, {PART_WORDS[place.part]}: {tallyWords(place)}
              </li>
            ))}
        </ul>
      </details>
    </section>
  );
}

interface ThirdProps {
  readonly kiln: KilnFile;
  readonly maps: KilnMaps;
  readonly height: Height;
}

function Third({ kiln, maps, height }: ThirdProps) {
  const { temperatureUnits: units } = useSettings();
  const places = maps.places.filter((each) => each.height === height);
  const heat = maps.heat.find((each) => each.height === height);
  const sign = heatSign(heat?.overC ?? heat?.foretoldOverC ?? null);
  const pieces = places.reduce((sum, each) => sum + each.pieces, 0);
  return (
    <figure className={styles.third}>
      <LevelMap
        kiln={kiln}
        places={places}
        label={`${HEIGHT_WORDS[height]} from above: ${pieces} pieces stood there`}
      />
      <figcaption>
        <strong>{HEIGHT_WORDS[height]}</strong>
        {heat && (
          <span className={sign === "hot" ? styles.hot : sign === "cool" ? styles.cool : undefined}>
            {sign === "hot" && <UpIcon size={18} />}
            {sign === "cool" && <DownIcon size={18} />}
            {heatWords(heat, units)}
          </span>
        )}
      </figcaption>
    </figure>
  );
}
