import type { FormName, FormSize } from "../../../ware/forms.ts";

/** A size to draw a form at before she has typed one: ordinary pots of ours, common practice, no source. Millimetres. */
export const TYPICAL_SIZE: Readonly<Record<FormName, Required<FormSize>>> = {
  beaker: { diameterMm: 80, heightMm: 95, widthMm: 80 },
  mug: { diameterMm: 85, heightMm: 95, widthMm: 85 },
  bowl: { diameterMm: 150, heightMm: 70, widthMm: 150 },
  plate: { diameterMm: 240, heightMm: 30, widthMm: 240 },
  vase: { diameterMm: 120, heightMm: 190, widthMm: 120 },
  bottle: { diameterMm: 95, heightMm: 210, widthMm: 95 },
  jar: { diameterMm: 120, heightMm: 140, widthMm: 120 },
  lid: { diameterMm: 100, heightMm: 45, widthMm: 100 },
  jug: { diameterMm: 120, heightMm: 160, widthMm: 120 },
  teapot: { diameterMm: 150, heightMm: 130, widthMm: 150 },
  box: { diameterMm: 140, heightMm: 90, widthMm: 100 },
  tile: { diameterMm: 150, heightMm: 12, widthMm: 150 },
  other: { diameterMm: 110, heightMm: 110, widthMm: 110 },
};
