import type { ReactNode } from "react";
import { KilnIcon, LoadIcon, StudioIcon, WaitingIcon } from "../parts/icons.tsx";

/** The four places of the studio, as the navigation shows them. */
export const PLACES: readonly { readonly path: string; readonly name: string; readonly icon: ReactNode }[] = [
  { path: "/", name: "Waiting", icon: <WaitingIcon /> },
  { path: "/loads", name: "Loads", icon: <LoadIcon /> },
  { path: "/kilns", name: "Kilns", icon: <KilnIcon /> },
  { path: "/settings", name: "Studio", icon: <StudioIcon /> },
];

/** Which place a screen belongs to. Clay bodies and glazes are the studio's. */
export function placeOf(location: string): string {
  if (location === "/") return "/";
  if (location.startsWith("/materials")) return "/settings";
  return PLACES.find(({ path }) => path !== "/" && location.startsWith(path))?.path ?? "";
}
