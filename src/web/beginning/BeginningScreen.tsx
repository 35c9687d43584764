import { Page } from "../parts/Page.tsx";

export default function BeginningScreen() {
  return <Page title="Welcome">Not built yet.</Page>;
}
