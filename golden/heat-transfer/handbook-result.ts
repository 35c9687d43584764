/** A handbook's problem through the solver. */
export interface HandbookResult {
  readonly id: string;
  /** What the book asks for, by the closed form and by the solver. */
  readonly exact: number;
  readonly found: number;
  readonly unit: string;
  /** The worst error of all that is compared, and the most allowed. */
  readonly error: number;
  readonly errorUnit: "K" | "%";
  readonly most: number;
}
