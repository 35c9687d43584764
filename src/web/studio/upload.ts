import type { ErrorAnswer } from "../../studio/api/contract.ts";
import { StudioAway, StudioRefusal } from "./client.ts";
import { passphraseAsked } from "./connection.ts";

/**
 * Sends a file to the studio and tells how far it has come. (`fetch` cannot tell.)
 *
 * @param mediaType what it is sent as, such as "application/zip"
 * @param onShare told the share that has gone, 0 to 1
 * @throws StudioRefusal where the studio says no, StudioAway where it does not answer
 */
export const upload = <Answer>(
  path: string,
  file: Blob,
  mediaType: string,
  onShare: (share: number) => void,
): Promise<Answer> =>
  new Promise((resolve, reject) => {
    const request = new XMLHttpRequest();
    request.open("POST", `/api${path}`);
    request.setRequestHeader("content-type", mediaType);
    request.responseType = "json";
    request.upload.onprogress = ({ loaded, total }) => onShare(total > 0 ? loaded / total : 0);
    request.onerror = () => reject(new StudioAway());
    request.onload = () => {
      const { status, response } = request;
      if (status >= 200 && status < 300) return resolve(response as Answer);
      if (status === 401) passphraseAsked.set(true);
      const error = (response as ErrorAnswer | null)?.error;
      if (status >= 500 || status === 401 || !error) return reject(new StudioAway(error?.message));
      reject(new StudioRefusal(error));
    };
    request.send(file);
  });
