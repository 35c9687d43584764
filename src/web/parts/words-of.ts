/** An error in words for her: the studio's own sentence, or that something went wrong in Wareboard itself. */
export function wordsOf(error: unknown): string {
  if (!(error instanceof Error)) return String(error);
  if (error.name === "StudioAway") return `${error.message} Nothing is lost; try again in a moment.`;
  if (error.message === "") return "Something went wrong in Wareboard itself.";
  return `${error.message.charAt(0).toUpperCase()}${error.message.slice(1)}`;
}
