import type { FiringRecord } from "../../../studio/records/firing-record.ts";
import { Button, SaveIcon, tell, wordsOf } from "../../parts/index.ts";
import { useSettings } from "../../studio/hooks.ts";
import { saveFile } from "../save-file.ts";

/** The firing as a calendar's file: its start, when to look, when it should shut off, when it may be opened. */
export function CalendarButton({ firing }: { readonly firing: FiringRecord }) {
  const { studioName } = useSettings();
  const save = async () => {
    try {
      const { calendarEntry } = await import("../../../studio/firings/calendar-entry.ts");
      saveFile("firing.ics", "text/calendar", calendarEntry(firing, new Date().toISOString(), studioName));
    } catch (error) {
      tell(wordsOf(error));
    }
  };
  return (
    <Button look="quiet" icon={<SaveIcon />} isDisabled={firing.foretold === undefined} onPress={() => void save()}>
      For the calendar
    </Button>
  );
}
