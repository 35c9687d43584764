import { BadInput } from "../../../measures/bad-input.ts";
import { answerKiln, type KilnQuestion } from "./kiln-answers.ts";

// Beside the page, so that no screen stutters while a kiln is reckoned.

export interface SentQuestion {
  readonly number: number;
  readonly question: KilnQuestion;
}

export type SentAnswer =
  | { readonly number: number; readonly answer: unknown }
  | { readonly number: number; readonly refusal: ConstructorParameters<typeof BadInput>[0] }
  | { readonly number: number; readonly failure: string };

const answered = ({ number, question }: SentQuestion): SentAnswer => {
  try {
    return { number, answer: answerKiln(question) };
  } catch (error) {
    if (!(error instanceof BadInput)) return { number, failure: String(error) };
    const { code, path, found, expected } = error;
    return { number, refusal: { code, path, found, expected } };
  }
};

addEventListener("message", ({ data }: MessageEvent<SentQuestion>) => postMessage(answered(data)));
