import { useState } from "react";
import { Button, Dialog, NumberField, Problem } from "../../parts/index.ts";
import { useCommand, useSettings } from "../../studio/hooks.ts";
import { type PriceDraft, readPrices } from "./price-draft.ts";

interface PricesDialogProps {
  readonly of: "wear" | "fee";
  readonly currency: string;
  readonly onClose: () => void;
}

/** What wear costs, or what guests pay. An emptied price is left out of the sums. */
export default function PricesDialog({ of, currency, onClose }: PricesDialogProps) {
  const settings = useSettings();
  const command = useCommand();
  const [draft, setDraft] = useState<PriceDraft>(() => ({
    elementSetPrice: settings.elementSetPrice ?? null,
    elementLifeFirings: settings.elementLifeFirings ?? null,
    shelfPrice: settings.shelfPrice ?? null,
    shelfLifeFirings: settings.shelfLifeFirings ?? null,
    perLitre: settings.guestFee?.perLitre ?? null,
    perFiring: settings.guestFee?.perFiring ?? null,
  }));
  const [problem, setProblem] = useState<unknown>(null);
  const isWear = of === "wear";
  const keep = () => {
    const read = readPrices(of, draft);
    if ("missing" in read) return setProblem(read.missing);
    command("change-settings", read.change).then(onClose, setProblem);
  };
  const price = (field: keyof PriceDraft, label: string, hint?: string) => (
    <NumberField
      label={currency === "" ? label : `${label}, ${currency}`}
      hint={hint}
      isFraction
      isShort
      min={0}
      max={1_000_000}
      value={draft[field]}
      onChange={(value) => setDraft({ ...draft, [field]: value })}
    />
  );
  const life = (field: keyof PriceDraft, label: string) => (
    <NumberField
      label={label}
      isShort
      min={1}
      max={100_000}
      value={draft[field]}
      onChange={(value) => setDraft({ ...draft, [field]: value })}
    />
  );
  return (
    <Dialog
      title={isWear ? "What wear costs" : "What guests pay"}
      isOpen
      onClose={onClose}
      actions={
        <Button look="main" onPress={keep}>
          Keep it
        </Button>
      }
    >
      {isWear ? (
        <>
          {price("elementSetPrice", "A new set of elements", "With the electrician who fits it.")}
          {life("elementLifeFirings", "Lasts so many firings")}
          {price("shelfPrice", "A new shelf")}
          {life("shelfLifeFirings", "Lasts so many firings, a shelf")}
        </>
      ) : (
        <>
          {price(
            "perLitre",
            "For each litre of space",
            "A piece’s space with the air about it, as it stands in the load.",
          )}
          {price("perFiring", "And for each firing")}
        </>
      )}
      <Problem error={problem} />
    </Dialog>
  );
}
