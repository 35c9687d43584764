import { Suspense, useEffect, useRef } from "react";
import { Redirect, Route, Switch, useLocation } from "wouter";
import { ActionLists } from "../actions/ActionLists.tsx";
import { useAction } from "../actions/registry.ts";
import { setOut } from "../parts/arriving.ts";
import { Notices } from "../parts/Notices.tsx";
import { Spinner } from "../parts/Spinner.tsx";
import { passphraseAsked } from "../studio/connection.ts";
import { useConnection, useStudioCard } from "../studio/hooks.ts";
import { useWatched } from "../studio/watched.ts";
import { ConnectionLine } from "./ConnectionLine.tsx";
import { Navigation } from "./Navigation.tsx";
import { NotFound } from "./NotFound.tsx";
import { PassphraseScreen } from "./PassphraseScreen.tsx";
import { PLACES } from "./places.tsx";
import { ScreenBoundary } from "./ScreenBoundary.tsx";
import styles from "./Shell.module.css";
import { SCREENS } from "./screens.ts";

/** The frame every screen stands in. */
export function Shell() {
  const isAsked = useWatched(passphraseAsked);
  return (
    <>
      {isAsked ? <PassphraseScreen /> : <Studio />}
      <Notices />
    </>
  );
}

function Studio() {
  const [location] = useLocation();
  const card = useStudioCard();
  const connection = useConnection();
  const lastLocation = useRef(location);
  useEffect(() => {
    if (lastLocation.current === location) return;
    lastLocation.current = location;
    setOut();
  }, [location]);
  // Whether this is the first visit is known in a moment; drawing the wrong screen meanwhile would only blink.
  if (card === undefined && connection !== "away") return <Coming />;
  if (card?.isNew && location !== "/begin") return <Redirect to="/begin" replace />;
  const isBeginning = location === "/begin";
  return (
    <div className={isBeginning ? styles.bare : styles.shell}>
      <a className={styles.skip} href="#main">
        To the screen itself
      </a>
      {!isBeginning && <Navigation />}
      <main id="main" tabIndex={-1} className={styles.main}>
        <ConnectionLine />
        <ScreenBoundary key={location}>
          <Suspense fallback={<Coming />}>
            <Switch>
              {SCREENS.map(({ path, Shown }) => (
                <Route key={path} path={path} component={Shown} />
              ))}
              <Route component={NotFound} />
            </Switch>
          </Suspense>
        </ScreenBoundary>
      </main>
      <GoTo />
      <ActionLists />
    </div>
  );
}

const Coming = () => (
  <div className={styles.coming}>
    <Spinner words="One moment" />
  </div>
);

/** Every place, for the palette. */
function GoTo() {
  return (
    <>
      {PLACES.map(({ path, name }) => (
        <GoToPlace key={path} path={path} name={name} />
      ))}
      <GoToPlace path="/materials" name="Clay bodies and glazes" />
      <GoToPlace path="/programmes" name="My own programmes" />
      <GoToPlace path="/money" name="What firing costs" />
    </>
  );
}

function GoToPlace({ path, name }: { readonly path: string; readonly name: string }) {
  const [location, go] = useLocation();
  const isEnabled = location !== path;
  useAction({ id: `go ${path}`, name, group: "Go to", run: () => go(path), isEnabled });
  return null;
}
