import { fittingSize } from "./fitting-size.ts";

const QUALITY = 0.85;

/**
 * A photo made small enough to send, upright as it was taken, without what the camera wrote into it of place and time.
 *
 * @throws Error where the browser cannot read the picture, in words for her
 */
export async function downscaled(file: Blob): Promise<Blob> {
  let picture: ImageBitmap;
  try {
    picture = await createImageBitmap(file);
  } catch {
    throw new Error("This picture cannot be read here. A JPEG, PNG or WebP will do.");
  }
  const { width, height } = fittingSize(picture.width, picture.height);
  const canvas = document.createElement("canvas");
  canvas.width = width;
  canvas.height = height;
  canvas.getContext("2d")?.drawImage(picture, 0, 0, width, height);
  picture.close();
  // A browser that writes no WebP gives a PNG instead, which would be far heavier than the JPEG asked for then.
  const webp = await written(canvas, "image/webp");
  const made = webp?.type === "image/webp" ? webp : await written(canvas, "image/jpeg");
  if (!made) throw new Error("This picture could not be made smaller. Try another.");
  return made;
}

const written = (canvas: HTMLCanvasElement, type: string): Promise<Blob | null> =>
  new Promise((resolve) => canvas.toBlob(resolve, type, QUALITY));
