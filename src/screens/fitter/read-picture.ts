import { type Remote, transfer, wrap } from 'comlink';
import type { CodeService } from '../../worker/code-worker.ts';

/** Milliseconds to look for a code in one still picture, and in one frame of the camera. Our choice. */
const FOR_A_PICTURE = 3000;
const FOR_A_FRAME = 200;

let reader: Remote<CodeService> | undefined;
const read = (picture: ImageBitmap, timeLimit: number): Promise<string | undefined> => {
  reader ??= wrap<CodeService>(new Worker(new URL('../../worker/code-worker.ts', import.meta.url), { type: 'module' }));
  return reader.read(transfer(picture, [picture]), timeLimit);
};

/** The text of the square code in a picture; nothing when none is found. Throws when the file is no picture. */
export const readPicture = async (file: Blob): Promise<string | undefined> =>
  read(await createImageBitmap(file), FOR_A_PICTURE);

/** The same of what a camera shows just now. */
export async function readVideo(video: HTMLVideoElement): Promise<string | undefined> {
  if (video.videoWidth === 0) return undefined;
  return read(await createImageBitmap(video), FOR_A_FRAME);
}
