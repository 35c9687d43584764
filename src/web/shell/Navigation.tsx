import { Link, useLocation } from "wouter";
import { openList } from "../actions/open-list.ts";
import { KeyboardIcon, SearchIcon } from "../parts/icons.tsx";
import { useSettings } from "../studio/hooks.ts";
import styles from "./Navigation.module.css";
import { PLACES, placeOf } from "./places.tsx";
import { screenAt } from "./screens.ts";

/** At the left on a desktop, at the bottom on a phone, where the thumb is. */
export function Navigation() {
  const [location] = useLocation();
  const { studioName } = useSettings();
  const here = placeOf(location);
  return (
    <nav className={styles.navigation} aria-label="The studio">
      <p className={styles.name}>{studioName || "Wareboard"}</p>
      <ul className={styles.places}>
        {PLACES.map(({ path, name, icon }) => (
          <li key={path}>
            <Link
              href={path}
              className={styles.place}
              aria-current={path === here ? "page" : undefined}
              onPointerEnter={() =>
                void screenAt(path)
                  ?.fetch()
                  .catch(() => {})
              }
            >
              {icon}
              <span>{name}</span>
            </Link>
          </li>
        ))}
        <li className={styles.onPhone}>
          <button type="button" className={styles.place} onClick={() => openList.set("palette")}>
            <SearchIcon />
            <span>Find</span>
          </button>
        </li>
      </ul>
      <div className={styles.foot}>
        <button type="button" className={styles.place} onClick={() => openList.set("palette")}>
          <SearchIcon />
          <span>Find</span>
        </button>
        <button type="button" className={styles.place} onClick={() => openList.set("keys")}>
          <KeyboardIcon />
          <span>Keys</span>
        </button>
      </div>
    </nav>
  );
}
