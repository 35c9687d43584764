import "./look/fonts.css";
import "./look/tokens.css";
import "./look/base.css";
import "./look/print.css";
import "./look/device-look.ts";
import { QueryClientProvider } from "@tanstack/react-query";
import { StrictMode } from "react";
import { createRoot } from "react-dom/client";
import { keepProgram } from "./shell/keep-program.ts";
import { tellLateRefusals } from "./shell/late-refusals.ts";
import { Shell } from "./shell/Shell.tsx";
import { screenAt } from "./shell/screens.ts";
import { queries } from "./studio/cache.ts";
import { beginListening } from "./studio/events.ts";
import { keepReads } from "./studio/kept-reads.ts";
import { readAhead } from "./studio/read-ahead.ts";
import { showNotices } from "./watch/notices/show-notices.ts";

// The screen she came for is fetched beside the first question to the studio, not after it.
void screenAt(location.pathname)
  ?.fetch()
  .catch(() => {});
keepReads();
beginListening();
tellLateRefusals();
showNotices();
keepProgram();
readAhead();
// Pictures and temperatures from beside the kiln go on their way whichever screen shows.
void import("./unload/waiting/waiting-sends.ts").then(({ keepSending }) => keepSending());

createRoot(document.getElementById("app") as HTMLElement).render(
  <StrictMode>
    <QueryClientProvider client={queries}>
      <Shell />
    </QueryClientProvider>
  </StrictMode>,
);
