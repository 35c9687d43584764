import { lazy, Suspense, useEffect } from "react";
import { useWatched } from "../studio/watched.ts";
import { openList } from "./open-list.ts";
import { ANYWHERE, listenForKeys, useAction } from "./registry.ts";

const Palette = lazy(() => import("./Palette.tsx"));
const KeyboardHelp = lazy(() => import("./KeyboardHelp.tsx"));

/** Listens for keys, and shows the palette or the keyboard help where asked. */
export function ActionLists() {
  const open = useWatched(openList);
  useEffect(listenForKeys, []);
  const toggle = (which: "palette" | "keys") => () => openList.set(openList.get() === which ? null : which);
  useAction({ id: "palette", name: "Find something to do", keys: "mod+k", group: ANYWHERE, run: toggle("palette") });
  useAction({ id: "keys", name: "Show the keys", keys: "?", group: ANYWHERE, run: toggle("keys") });
  return (
    <Suspense fallback={null}>
      {open === "palette" && <Palette />}
      {open === "keys" && <KeyboardHelp />}
    </Suspense>
  );
}
