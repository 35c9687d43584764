import type { LoadPlan } from "../loading/load-plan.ts";
import type { LoadRequest } from "../loading/load-request.ts";
import type { LengthUnits } from "../measures/length.ts";
import { cautionPages } from "./cautions-page.ts";
import { levelPages } from "./level-page.ts";
import { orderPages } from "./order-page.ts";
import { overviewPages } from "./overview-page.ts";
import { drawPage, type PageContent, type Paper, type SheetPage } from "./page/sheet-page.ts";
import { sheetLoad } from "./sheet-load.ts";

export type { Paper, SheetPage } from "./page/sheet-page.ts";

export interface SheetOptions {
  readonly paper: Paper;
  readonly units: LengthUnits;
  /** What the load is called; the kiln's name where left out. */
  readonly title?: string;
  /** Rules the plan breaks, to be shown on the first page. */
  readonly broken?: readonly { readonly message: string }[];
  /** Pages about the firing (`firingPages`), set before the cautions. */
  readonly firing?: readonly PageContent[];
}

/**
 * The pages to carry to the kiln: the whole kiln at a glance, a plan of each level to scale, the loading order, the
 * firing (where its pages are given), the cautions.
 *
 * @param request a read load request
 * @param plan a read plan of it; rules it breaks are the caller's to find and to pass in
 * @returns one whole SVG document a page, its user unit a millimetre
 * @throws BadInput where the plan names a shelf or a piece the request has not
 */
export function loadSheetPages(request: LoadRequest, plan: LoadPlan, options: SheetOptions): SheetPage[] {
  const { paper, units } = options;
  const load = sheetLoad(request, plan);
  const title = options.title ?? request.kiln.name;
  const loading: PageContent[] = [
    ...overviewPages(load, title, options.broken ?? [], paper, units),
    ...load.levels.flatMap((level) => levelPages(load, level, paper, units)),
    ...orderPages(load, paper, units),
  ];
  const contents = [...loading, ...(options.firing ?? []), ...cautionPages(paper, units)];
  return contents.map((content, i) => drawPage(content, paper, title, i + 1, contents.length));
}
