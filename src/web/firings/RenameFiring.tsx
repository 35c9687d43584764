import { useState } from "react";
import type { FiringRecord } from "../../studio/records/firing-record.ts";
import { Button, Dialog, TextField } from "../parts/index.ts";
import { useFiringCommands } from "./use-firing-commands.ts";

/** Another name for a firing. */
export default function RenameFiring({ firing, onClose }: { firing: FiringRecord; onClose: () => void }) {
  const { rename } = useFiringCommands();
  const [name, setName] = useState(firing.name);
  const keep = () => {
    rename(firing, name.trim());
    onClose();
  };
  return (
    <Dialog
      title="Rename the firing"
      isOpen
      onClose={onClose}
      actions={
        <Button look="main" isDisabled={name.trim() === ""} onPress={keep}>
          Rename
        </Button>
      }
    >
      <form
        onSubmit={(event) => {
          event.preventDefault();
          if (name.trim() !== "") keep();
        }}
      >
        <TextField label="Name" value={name} onChange={setName} maxLength={120} autoFocus />
      </form>
    </Dialog>
  );
}
