import { expect, test } from "vitest";
import { WARE_STAGES } from "../../../studio/records/ware-record.ts";
import { FORM_NAMES } from "../../../ware/forms.ts";
import { FORMS, STAGES } from "./ware-words.ts";

test("the words are of every form and stage there is, in their order", () => {
  expect(FORMS).toEqual(FORM_NAMES);
  expect(STAGES).toEqual(WARE_STAGES);
});
