/** A lid may be lifted under this, °C. Trade pages (src/firing/prediction/predict.ts, COOL_STEPS). */
export const OPEN_UNDER_C = 95;
