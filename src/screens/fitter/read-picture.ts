import decodeQR from 'qr/decode.js';

/** Longer sides are scaled down to this many pixels before reading: enough for a card filling a third of the picture. Our choice. */
const LONGEST_SIDE = 1600;
/** Milliseconds for one still picture, and for one frame of the camera. Our choice. */
const FOR_A_PICTURE = 1500;
const FOR_A_FRAME = 80;

/** The text of the square code in a picture; nothing when none is found. Throws when the file is no picture. */
export async function readPicture(file: Blob): Promise<string | undefined> {
  const picture = await createImageBitmap(file);
  try {
    return readFrame(picture, picture.width, picture.height, FOR_A_PICTURE);
  } finally {
    picture.close();
  }
}

/** The same of what a camera shows just now. */
export function readVideo(video: HTMLVideoElement): string | undefined {
  if (video.videoWidth === 0) return undefined;
  return readFrame(video, video.videoWidth, video.videoHeight, FOR_A_FRAME);
}

function readFrame(from: CanvasImageSource, width: number, height: number, timeLimit: number): string | undefined {
  const scale = Math.min(1, LONGEST_SIDE / Math.max(width, height));
  const canvas = new OffscreenCanvas(Math.round(width * scale), Math.round(height * scale));
  const context = canvas.getContext('2d', { willReadFrequently: true });
  if (!context) return undefined;
  context.drawImage(from, 0, 0, canvas.width, canvas.height);
  const { data } = context.getImageData(0, 0, canvas.width, canvas.height);
  try {
    return decodeQR({ width: canvas.width, height: canvas.height, data }, { timeLimit });
  } catch {
    return undefined;
  }
}
