import { useState } from "react";
import type { Programme } from "../../../firing/programme/programme.ts";
import { Button, Dialog } from "../../parts/index.ts";
import type { WrittenWish } from "../prepare/usual-wish.ts";
import { WriteForm } from "./WriteForm.tsx";

const FIRST: WrittenWish = { cone: "6", kind: "glaze", pace: "medium" };

/** A programme written for no load in particular. */
export default function WriteDialog({
  onKeep,
  onClose,
}: {
  readonly onKeep: (programme: Programme) => void;
  readonly onClose: () => void;
}) {
  const [written, setWritten] = useState<Programme | null>(null);
  return (
    <Dialog
      title="Have one written"
      isOpen
      isWide
      onClose={onClose}
      actions={
        <Button
          look="main"
          isDisabled={written === null}
          onPress={() => {
            if (written) onKeep(written);
            onClose();
          }}
        >
          Keep it
        </Button>
      }
    >
      <WriteForm first={FIRST} kiln={null} onWritten={setWritten} />
    </Dialog>
  );
}
