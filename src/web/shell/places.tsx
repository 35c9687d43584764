import type { ReactNode } from "react";
import { ConesIcon, KilnIcon, LoadIcon, StudioIcon, WaitingIcon } from "../parts/icons.tsx";

/** The five places of the studio, as the navigation shows them. */
export const PLACES: readonly { readonly path: string; readonly name: string; readonly icon: ReactNode }[] = [
  { path: "/", name: "Waiting", icon: <WaitingIcon /> },
  { path: "/loads", name: "Loads", icon: <LoadIcon /> },
  { path: "/firings", name: "Firings", icon: <ConesIcon /> },
  { path: "/kilns", name: "Kilns", icon: <KilnIcon /> },
  { path: "/settings", name: "Studio", icon: <StudioIcon /> },
];

/** Screens that stand under a place without saying so in their path. */
const UNDER: readonly (readonly [string, string])[] = [
  ["/materials", "/settings"],
  ["/money", "/firings"],
  ["/programmes", "/firings"],
  ["/learn", "/kilns"],
  ["/upkeep", "/kilns"],
];

/** Which place a screen belongs to. */
export function placeOf(location: string): string {
  if (location === "/") return "/";
  const under = UNDER.find(([path]) => location.startsWith(path));
  if (under) return under[1];
  return PLACES.find(({ path }) => path !== "/" && location.startsWith(path))?.path ?? "";
}
