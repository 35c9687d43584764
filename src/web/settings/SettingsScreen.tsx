import { Page } from "../parts/Page.tsx";

export default function SettingsScreen() {
  return <Page title="Studio">Not built yet.</Page>;
}
