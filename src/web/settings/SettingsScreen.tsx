import { Button } from "../parts/Button.tsx";
import { MaterialsIcon } from "../parts/icons.tsx";
import { Page } from "../parts/Page.tsx";
import { AboutSection } from "./AboutSection.tsx";
import { ArchiveSection } from "./ArchiveSection.tsx";
import { DeviceSection } from "./DeviceSection.tsx";
import { HistorySection } from "./HistorySection.tsx";
import { PhoneSection } from "./PhoneSection.tsx";
import { Section } from "./Section.tsx";
import { StudioSection } from "./StudioSection.tsx";

/** The studio itself: what holds everywhere, this device, the way out and back. */
export default function SettingsScreen() {
  return (
    <Page title="Studio" undoScope="settings">
      <StudioSection />
      <Section title="Clay bodies and glazes">
        <p>What your pots are made of and wear, and the cones each of them is for.</p>
        <div>
          <Button icon={<MaterialsIcon />} href="/materials">
            Clay bodies and glazes
          </Button>
        </div>
      </Section>
      <Section title="Money">
        <p>What electricity, elements and shelves cost, what each firing came to, and what guests pay.</p>
        <div>
          <Button href="/money">What firing costs</Button>
        </div>
      </Section>
      <DeviceSection />
      <PhoneSection />
      <ArchiveSection />
      <HistorySection />
      <AboutSection />
    </Page>
  );
}
