import { type FormEvent, useState } from "react";
import { Button } from "../parts/Button.tsx";
import { Page } from "../parts/Page.tsx";
import { Problem } from "../parts/Problem.tsx";
import { TextField } from "../parts/TextField.tsx";
import { openSession } from "../studio/session.ts";
import styles from "./PassphraseScreen.module.css";

/** On the home network the studio asks each device once. */
export function PassphraseScreen() {
  const [passphrase, setPassphrase] = useState("");
  const [isBusy, setBusy] = useState(false);
  const [error, setError] = useState<unknown>(null);
  const open = async (event: FormEvent) => {
    event.preventDefault();
    setBusy(true);
    setError(null);
    try {
      await openSession(passphrase);
    } catch (problem) {
      setError(problem);
    } finally {
      setBusy(false);
    }
  };
  return (
    <main className={styles.door}>
      <Page title="The studio’s passphrase">
        <p>The one Wareboard was started with. This device is asked once; then it knows the way in.</p>
        <form className={styles.form} onSubmit={open}>
          <TextField
            label="Passphrase"
            isSecret
            autoFocus
            autoComplete="current-password"
            value={passphrase}
            onChange={setPassphrase}
          />
          <Problem error={error} />
          <Button look="main" isSubmit isWide isBusy={isBusy} isDisabled={passphrase === ""}>
            Go in
          </Button>
        </form>
      </Page>
    </main>
  );
}
