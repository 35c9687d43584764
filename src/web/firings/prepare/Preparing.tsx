import { lazy, Suspense, useState } from "react";
import { Link, useLocation } from "wouter";
import type { FiringRecord } from "../../../studio/records/firing-record.ts";
import { Menu, Page, Problem, Spinner } from "../../parts/index.ts";
import { useKiln, useLoad, useProgrammes, useSettings } from "../../studio/hooks.ts";
import { useForetelling, useLoadedKiln } from "../foretelling/use-foretelling.ts";
import { StartPart } from "../start/StartPart.tsx";
import { useFiringCommands } from "../use-firing-commands.ts";
import { ChecklistPart } from "./ChecklistPart.tsx";
import { ExpectPart } from "./ExpectPart.tsx";
import styles from "./Preparing.module.css";
import { ProgrammePart } from "./ProgrammePart.tsx";
import { SwitchPart } from "./SwitchPart.tsx";

const ChooseProgramme = lazy(() => import("./ChooseProgramme.tsx"));
const EditSegments = lazy(() => import("../programmes/EditSegments.tsx"));
const RenameFiring = lazy(() => import("../RenameFiring.tsx"));
const FiringSheetDialog = lazy(() => import("../FiringSheetDialog.tsx"));

type Asked = "choose" | "edit" | "rename" | "sheet" | null;

/** A firing on its way to the switch: its programme, what is to be expected of it, when, and what to see to first. */
export default function Preparing({ firing }: { readonly firing: FiringRecord }) {
  const load = useLoad(firing.loadId ?? "");
  const kilnRecord = useKiln(firing.kilnId);
  const kiln = useLoadedKiln(firing.loadId === null ? null : load);
  const telling = useForetelling(kiln, firing.programme);
  const programmes = useProgrammes();
  const settings = useSettings();
  const commands = useFiringCommands();
  const [, go] = useLocation();
  const [asked, setAsked] = useState<Asked>(null);
  const close = () => setAsked(null);
  const remove = async () => {
    if (await commands.remove(firing)) go("/firings");
  };
  const more = [
    { id: "rename", label: "Rename", onPress: () => setAsked("rename") },
    {
      id: "sheet",
      label: "Print the sheet",
      isDisabled: !load?.plan || !firing.programme,
      onPress: () => setAsked("sheet"),
    },
    { id: "remove", label: "Take out this firing", isDanger: true, onPress: () => void remove() },
  ];
  return (
    <Page
      title={firing.name}
      back={{ href: "/firings", label: "To the firings" }}
      undoScope={`firing:${firing.id}`}
      actions={<Menu label={`More for ${firing.name}`} items={more} />}
      below={
        <>
          To be fired in {kilnRecord?.kiln.name ?? "a kiln that is gone"}
          {load && (
            <>
              {" · "}
              <Link href={`/loads/${load.id}`}>{load.name === firing.name ? "its load" : load.name}</Link>
            </>
          )}
        </>
      }
    >
      <Problem error={telling.error} />
      <div className={styles.columns}>
        <div className={styles.column}>
          <ProgrammePart
            firing={firing}
            findings={telling.foretold?.findings}
            onChoose={() => setAsked("choose")}
            onEdit={() => setAsked("edit")}
          />
          {kiln !== null && firing.programme && (
            <ExpectPart
              programme={firing.programme}
              startAt={firing.plannedStartAt ?? null}
              telling={telling}
              kept={firing.foretold}
              onKeepAnew={() => commands.foretellAgain(firing)}
            />
          )}
        </div>
        <div className={styles.column}>
          <StartPart firing={firing} prediction={telling.foretold?.prediction} tariff={settings.tariff ?? null} />
          <ChecklistPart firing={firing} />
          <SwitchPart firing={firing} />
        </div>
      </div>
      <Suspense fallback={null}>
        {asked === "choose" && programmes && (
          <ChooseProgramme firing={firing} kiln={kiln ?? null} load={load ?? null} own={programmes} onClose={close} />
        )}
        {asked === "edit" && firing.programme && (
          <EditSegments
            programme={firing.programme}
            keepWords="Use it for this firing"
            mayKeepAsOwn
            onKeep={(programme) => commands.chooseProgramme(firing, programme)}
            onClose={close}
          />
        )}
        {asked === "rename" && <RenameFiring firing={firing} onClose={close} />}
        {asked === "sheet" && load && <FiringSheetDialog firing={firing} load={load} onClose={close} />}
      </Suspense>
      {load === undefined && <Spinner />}
    </Page>
  );
}
