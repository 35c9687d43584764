import type { ReactNode } from "react";
import type { Grade } from "../../../studio/records/faults.ts";
import { CloseIcon, DoneIcon, RemoveIcon } from "../../parts/index.ts";

export const GRADE_NAMES: Readonly<Record<Grade, string>> = { good: "Good", second: "Second", lost: "Lost" };

/** Each grade's sign, so that no colour has to tell it alone. */
export const gradeSign = (grade: Grade, size: number): ReactNode => {
  if (grade === "good") return <DoneIcon size={size} />;
  return grade === "second" ? <RemoveIcon size={size} /> : <CloseIcon size={size} />;
};
