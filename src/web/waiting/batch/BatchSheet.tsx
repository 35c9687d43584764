import { useMemo, useState } from "react";
import type { WareRecord } from "../../../studio/records/ware-record.ts";
import { BinIcon, Button, CopyIcon, Dialog, DoneIcon, Menu } from "../../parts/index.ts";
import { useGlazes, useSettings, useWare } from "../../studio/hooks.ts";
import { PhotosOfBatch } from "../photos/PhotosOfBatch.tsx";
import { useWareCommands } from "../use-ware-commands.ts";
import { BatchFields } from "./BatchFields.tsx";
import { changeBetween } from "./batch-change.ts";
import { type BatchDraft, batchOf, draftOf, followingName } from "./batch-draft.ts";
import { copiesOf } from "./copies.ts";
import { LoadsOfBatch } from "./LoadsOfBatch.tsx";
import { NEXT_STAGE_WORDS, NEXT_STAGES, onReaching } from "./next-stage.ts";

export interface BatchSheetProps {
  readonly record: WareRecord;
  readonly onClose: () => void;
}

/** Everything of one batch, to look at and to change. Closing it keeps what was changed; that can be undone. */
export default function BatchSheet({ record, onClose }: BatchSheetProps) {
  const { lengthUnits } = useSettings();
  const commands = useWareCommands();
  const ware = useWare();
  const glazes = useGlazes();
  const taken = useMemo(() => {
    const others = ware?.filter(({ id }) => id !== record.id);
    return new Set(others?.map((batch) => batch.ware.name));
  }, [ware, record.id]);
  const [draft, setDraft] = useState<BatchDraft>(() => followingName(draftOf(record), lengthUnits, taken));
  const [isAsked, setAsked] = useState(false);
  const { name } = record.ware;

  const keep = () => {
    const after = batchOf(draft, lengthUnits, taken);
    // What cannot be kept is asked for once; closing again leaves the batch as it was.
    if (!after && !isAsked) return setAsked(true);
    const change = after && changeBetween(record, after);
    if (change) void commands.change([record.id], change, `Changed ${name}`);
    onClose();
  };
  const instead = (act: () => unknown) => () => {
    onClose();
    void act();
  };
  const glaze = glazes?.find(({ id }) => id === record.glazeId);
  const items = [
    ...NEXT_STAGES.filter((stage) => stage !== record.stage).map((stage) => ({
      id: stage,
      label: `${NEXT_STAGE_WORDS[stage].press} now`,
      icon: <DoneIcon />,
      onPress: instead(() =>
        commands.change([record.id], onReaching(stage, record, glaze), `${name}: ${NEXT_STAGE_WORDS[stage].done}`),
      ),
    })),
    {
      id: "copy",
      label: "Duplicate",
      icon: <CopyIcon />,
      onPress: instead(() =>
        commands.add(copiesOf([record], new Set(ware?.map((each) => each.ware.name))), `Duplicated ${name}`),
      ),
    },
    {
      id: "remove",
      label: "Remove",
      icon: <BinIcon />,
      isDanger: true,
      onPress: instead(() => commands.remove([record.id], `Removed ${name}`)),
    },
  ];
  return (
    <Dialog
      title={name}
      isOpen
      isWide
      onClose={keep}
      actions={
        <>
          <Menu label={`More for ${name}`} look="plain" items={items} />
          <Button look="main" onPress={keep}>
            Done
          </Button>
        </>
      }
    >
      <BatchFields
        draft={draft}
        change={(part) => setDraft((before) => ({ ...before, ...part }))}
        taken={taken}
        isAsked={isAsked}
        onDone={keep}
        isUnfolded
        beside={
          <>
            <LoadsOfBatch wareId={record.id} />
            <PhotosOfBatch wareId={record.id} name={name} />
          </>
        }
      />
    </Dialog>
  );
}
