import { useState } from "react";
import type { LoadRecord } from "../../studio/records/load-record.ts";
import { Button, Dialog, TextField } from "../parts/index.ts";
import { useLoadCommands } from "./use-load-commands.ts";

/** Another name for a load. */
export default function RenameDialog({ load, onClose }: { load: LoadRecord; onClose: () => void }) {
  const [name, setName] = useState(load.name);
  const commands = useLoadCommands();
  const wanted = name.trim();
  const problem = wanted === "" ? "A load needs a name." : null;
  const save = () => {
    if (problem) return;
    if (wanted !== load.name) void commands.rename(load, wanted);
    onClose();
  };
  return (
    <Dialog
      title="Rename the load"
      isOpen
      onClose={onClose}
      actions={
        <Button look="main" onPress={save} isDisabled={problem !== null}>
          Rename
        </Button>
      }
    >
      <form
        onSubmit={(event) => {
          event.preventDefault();
          save();
        }}
      >
        <TextField label="Name" value={name} onChange={setName} maxLength={120} problem={problem} autoFocus />
      </form>
    </Dialog>
  );
}
