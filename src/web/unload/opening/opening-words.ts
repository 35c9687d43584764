import { CAUTIONS } from "../../../sheets/cautions.ts";

/** What is to be minded when a kiln is opened; with its sources. */
export const OPENING_CAUTION = CAUTIONS.find(({ title }) => title === "Opening");

// As in that caution: the lid cracked at 120 °C or less, ware taken out at 50 °C or less.
const CRACK_C = 120;
const TOUCH_C = 50;

/** What a temperature at opening means, in a line. */
export function openingWords(celsius: number): { readonly kind: "keeps" | "mind" | "breaks"; readonly words: string } {
  if (celsius > CRACK_C) return { kind: "breaks", words: "Still too hot: shut it again and wait" };
  if (celsius > TOUCH_C) return { kind: "mind", words: "The lid may be cracked; the ware still burns fingers" };
  return { kind: "keeps", words: "Cool enough to unload" };
}
