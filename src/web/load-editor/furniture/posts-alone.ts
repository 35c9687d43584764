import { watched } from "../../studio/watched.ts";

/** Whether a post is moved by itself; else its whole column moves, so that posts stay one above another. */
export const postsAlone = watched(false);
