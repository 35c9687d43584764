import { Button, Sign, tell } from "../../parts/index.ts";
import { useWatched } from "../../studio/watched.ts";
import styles from "../Watch.module.css";
import { askForNotices, deviceNotices, noMoreNotices } from "./on-this-device.ts";

/** Whether this device is to tell of faults while its page is open. Asked by her press alone. */
export function NoticesButton() {
  const how = useWatched(deviceNotices);
  if (how === "cannot") {
    return <p className={styles.soft}>This browser shows no notices of its own: keep this page in sight.</p>;
  }
  if (how === "refused") {
    return (
      <p className={styles.soft}>
        Notices are refused in this browser’s settings for this page. E-mail and webhook are under Studio.
      </p>
    );
  }
  if (how === "on") {
    return (
      <div className={styles.beside}>
        <Sign kind="keeps">This device tells you while Wareboard is open in it</Sign>
        <Button look="quiet" onPress={noMoreNotices}>
          No more
        </Button>
      </div>
    );
  }
  const asked = async (): Promise<void> => {
    if ((await askForNotices()) === "on") tell("This device tells you of faults from now on");
  };
  return <Button onPress={() => void asked()}>Tell me on this device</Button>;
}
