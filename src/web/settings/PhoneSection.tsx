import { useMemo } from "react";
import { renderSVG } from "uqr";
import { useStudioCard } from "../studio/hooks.ts";
import styles from "./PhoneSection.module.css";
import { Section } from "./Section.tsx";

/** How a phone in the home network gets here. */
export function PhoneSection() {
  const addresses = useStudioCard()?.homeAddresses ?? [];
  return (
    <Section title="On the phone">
      {addresses.length === 0 ? <HowToOpen /> : addresses.map((each) => <Address key={each} address={each} />)}
      {addresses.length > 0 && (
        <p className={styles.soft}>
          The phone must be in your home network. It is asked for the passphrase once.
          {addresses.some((each) => each.startsWith("http:")) &&
            " Over plain http a phone cannot keep the program itself: leave the page open while you load, and ticks wait there until the network is back. Started with a certificate of yours (--certificate and --certificate-key), it opens without a network too."}
        </p>
      )}
    </Section>
  );
}

const HowToOpen = () => (
  <>
    <p>
      Only this machine can reach the studio now. To walk through a load at the kiln with your phone, write a passphrase
      of twelve letters or more into a file, here passphrase.txt, and start Wareboard with
    </p>
    <pre className={styles.command}>npm start -- --home-network --passphrase-file passphrase.txt</pre>
    <p className={styles.soft}>
      Every device is then asked for the passphrase once, and here stands what to point the phone’s camera at.
    </p>
  </>
);

function Address({ address }: { readonly address: string }) {
  const code = useMemo(() => `data:image/svg+xml,${encodeURIComponent(renderSVG(address, { border: 2 }))}`, [address]);
  return (
    <figure className={styles.address}>
      <img src={code} alt={`Square code that opens ${address}`} width={168} height={168} />
      <figcaption>
        Point the phone’s camera here, or type
        <br />
        <a href={address}>{address}</a>
      </figcaption>
    </figure>
  );
}
