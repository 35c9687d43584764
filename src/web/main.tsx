import { createRoot } from "react-dom/client";

createRoot(document.getElementById("app") as HTMLElement).render(<p>Wareboard</p>);
