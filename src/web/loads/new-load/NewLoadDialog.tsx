import { useMemo, useRef, useState } from "react";
import { useLocation, useSearch } from "wouter";
import { Button, ChoiceField, Dialog, Empty, Problem, Sign, Spinner, TextField } from "../../parts/index.ts";
import {
  newId,
  useClayBodies,
  useCommand,
  useConnection,
  useGlazes,
  useKilns,
  useLoads,
  useWare,
} from "../../studio/hooks.ts";
import { chosenForLoad } from "../../waiting/chosen-for-load.ts";
import { dayOf } from "../../waiting/words/calendar-day.ts";
import { batches } from "../../waiting/words/ware-words.ts";
import { beginPlanning } from "../use-planning.ts";
import { BatchChoice } from "./BatchChoice.tsx";
import { type Choice, chosenPieces, countsOf, firstChoice } from "./choice.ts";
import { FiringChoice } from "./FiringChoice.tsx";
import { type FiringOffer, firingOffers, offerFor, waitingWare, wantsFiring } from "./firing-offers.ts";
import styles from "./NewLoad.module.css";
import { suggestedName } from "./suggested-name.ts";
import { usualKiln } from "./usual-kiln.ts";

/** Makes a load of what waits: everything is chosen already, so that one more press plans it. */
export default function NewLoadDialog({ onClose }: { onClose: () => void }) {
  const ware = useWare();
  const kilns = useKilns();
  const loads = useLoads();
  const bodies = useClayBodies();
  const glazes = useGlazes();
  const waiting = useMemo(() => ware && loads && waitingWare(ware, loads), [ware, loads]);
  const offers = useMemo(
    () => waiting && bodies && glazes && firingOffers(waiting, bodies, glazes),
    [waiting, bodies, glazes],
  );
  if (!offers || !kilns || !loads || !waiting) {
    return (
      <Dialog title="New load" isOpen onClose={onClose}>
        <Spinner />
      </Dialog>
    );
  }
  if (offers.length === 0 || kilns.length === 0) {
    return (
      <Dialog title="New load" isOpen onClose={onClose}>
        {kilns.length === 0 ? (
          <Empty
            title="No kiln yet"
            words="A load needs a kiln: its size, its shelves and its posts."
            action={
              <Button look="main" href="/kilns">
                Add a kiln
              </Button>
            }
          />
        ) : (
          <Empty
            title={ware?.some(wantsFiring) ? "All that waits stands in a load already" : "Nothing waits for a firing"}
            words={
              ware?.some(wantsFiring)
                ? "Take pieces out of a planned load to use them in another, or put in what else stands on your boards."
                : "Put in what stands on your boards: a form, three numbers, a count."
            }
            action={
              <Button look="main" href="/">
                What waits
              </Button>
            }
          />
        )}
      </Dialog>
    );
  }
  return (
    <NewLoadForm
      offers={offers}
      kilns={kilns.map(({ id, kiln }) => ({ id, label: kiln.name }))}
      names={loads.map(({ name }) => name)}
      usual={usualKiln(kilns, loads)}
      onClose={onClose}
    />
  );
}

interface NewLoadFormProps {
  readonly offers: readonly FiringOffer[];
  readonly kilns: readonly { readonly id: string; readonly label: string }[];
  readonly names: readonly string[];
  readonly usual: string | undefined;
  readonly onClose: () => void;
}

function NewLoadForm({ offers, kilns, names, usual, onClose }: NewLoadFormProps) {
  const asked = useSearch();
  const wanted = useMemo(() => new Set(chosenForLoad(asked)), [asked]);
  const elsewhere = wanted.size - offers.flatMap(({ batches: own }) => own).filter(({ id }) => wanted.has(id)).length;
  const [, go] = useLocation();
  const command = useCommand();
  const [kilnId, setKilnId] = useState(
    () => (kilns.find(({ id }) => id === usual) ?? (kilns[0] as (typeof kilns)[number])).id,
  );
  const [offerId, setOfferId] = useState(() => (offerFor(offers, wanted) ?? (offers[0] as FiringOffer)).id);
  const offer = offers.find(({ id }) => id === offerId) ?? (offers[0] as FiringOffer);
  const [choice, setChoice] = useState<Choice>(() => firstChoice(offers, offer, wanted));
  const [ownName, setOwnName] = useState<string | null>(null);
  const [error, setError] = useState<unknown>(null);
  const [isBusy, setBusy] = useState(false);
  const connection = useConnection();
  const closed = useRef(false);
  const today = dayOf(new Date());
  const name = ownName ?? suggestedName(offer.kind, offer.cone, today, names);
  const pieces = chosenPieces(choice);

  // Another firing: its own batches are chosen; what was chosen by hand for the last one is not carried over.
  const chooseFiring = (to: string) => {
    const other = offers.find(({ id }) => id === to);
    if (!other) return;
    setOfferId(to);
    setChoice(firstChoice(offers, other, wanted));
  };

  const plan = async () => {
    setBusy(true);
    setError(null);
    const id = newId();
    try {
      await command("make-load", { id, kilnId, name: name.trim(), ...countsOf(choice) });
    } catch (problem) {
      setError(problem);
      setBusy(false);
      return;
    }
    beginPlanning({ loadId: id, keep: "nothing" });
    if (!closed.current) go(`/loads/${id}`, { replace: true });
  };

  const close = () => {
    closed.current = true;
    onClose();
  };

  return (
    <Dialog
      title="New load"
      isOpen
      isWide
      onClose={close}
      actions={
        <>
          <p className={styles.sum}>{pieces === 1 ? "1 piece" : `${pieces} pieces`}</p>
          <Button
            look="main"
            onPress={() => void plan()}
            isDisabled={pieces === 0 || name.trim() === ""}
            isBusy={isBusy}
          >
            Plan it
          </Button>
        </>
      }
    >
      <div className={styles.form}>
        {elsewhere > 0 && (
          <Sign kind="mind">
            {elsewhere === wanted.size ? "What you chose stands" : `${batches(elsewhere)} of what you chose stand`} in a
            load already
          </Sign>
        )}
        <FiringChoice offers={offers} value={offerId} today={today} onChange={chooseFiring} />
        {kilns.length > 1 && (
          <ChoiceField
            label="Kiln"
            look={kilns.length > 4 ? "list" : "row"}
            options={kilns}
            value={kilnId}
            onChange={setKilnId}
          />
        )}
        <BatchChoice offer={offer} choice={choice} today={today} onChange={setChoice} />
        <TextField label="Name" value={name} onChange={setOwnName} maxLength={120} />
        <Problem error={error} />
        {isBusy && connection === "away" && (
          <p role="status">
            The studio is away. The load is made and planned as soon as it is back; you may close this meanwhile.
          </p>
        )}
      </div>
    </Dialog>
  );
}
