import { Page } from "../parts/Page.tsx";

export default function LoadEditorScreen() {
  return <Page title="Load">Not built yet.</Page>;
}
