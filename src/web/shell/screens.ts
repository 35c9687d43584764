import { type ComponentType, type LazyExoticComponent, lazy } from "react";

/** A screen that is fetched when it is first shown. */
export interface Screen {
  readonly path: string;
  readonly Shown: LazyExoticComponent<ComponentType>;
  /** Fetches it ahead of time. */
  readonly fetch: () => Promise<unknown>;
}

const screen = (path: string, fetch: () => Promise<{ default: ComponentType }>): Screen => ({
  path,
  Shown: lazy(fetch),
  fetch,
});

/** Every screen; the first whose path fits is shown. */
export const SCREENS: readonly Screen[] = [
  screen("/", () => import("../waiting/WaitingScreen.tsx")),
  screen("/kilns", () => import("../kilns/KilnsScreen.tsx")),
  screen("/kilns/:id", () => import("../kilns/KilnScreen.tsx")),
  screen("/loads", () => import("../loads/LoadsScreen.tsx")),
  screen("/loads/compare/:id", () => import("../loads/CompareScreen.tsx")),
  screen("/loads/:id", () => import("../load-editor/LoadEditorScreen.tsx")),
  screen("/loads/:id/in-space", () => import("../view-in-space/InSpaceScreen.tsx")),
  screen("/loads/:id/at-the-kiln", () => import("../at-the-kiln/AtTheKilnScreen.tsx")),
  screen("/firings", () => import("../firings/FiringsScreen.tsx")),
  screen("/programmes", () => import("../firings/programmes/ProgrammesScreen.tsx")),
  screen("/firings/:id", () => import("../firings/FiringScreen.tsx")),
  screen("/firings/:id/watch", () => import("../watch/WatchScreen.tsx")),
  screen("/firings/:id/unload", () => import("../unload/UnloadScreen.tsx")),
  screen("/learn/:kilnId", () => import("../learn/LearnScreen.tsx")),
  screen("/upkeep/:kilnId", () => import("../upkeep/UpkeepScreen.tsx")),
  screen("/money", () => import("../money/MoneyScreen.tsx")),
  screen("/materials", () => import("../materials/MaterialsScreen.tsx")),
  screen("/settings", () => import("../settings/SettingsScreen.tsx")),
  screen("/begin", () => import("../beginning/BeginningScreen.tsx")),
];

/** The screen at exactly this path, without parameters. */
export const screenAt = (path: string): Screen | undefined => SCREENS.find((each) => each.path === path);
