import { chooseLook, useDeviceLook } from "../look/device-look.ts";
import { ChoiceField } from "../parts/ChoiceField.tsx";
import { Section } from "./Section.tsx";

const LOOKS = [
  { id: "device", label: "As the device" },
  { id: "light", label: "Light" },
  { id: "dark", label: "Dark" },
] as const;

/** What holds for this device alone. */
export const DeviceSection = () => (
  <Section title="This device">
    <ChoiceField label="Light or dark" look="row" options={LOOKS} value={useDeviceLook()} onChange={chooseLook} />
  </Section>
);
