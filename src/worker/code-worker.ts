import { expose } from 'comlink';
import decodeQR from 'qr/decode.js';

/** Longer sides are scaled down to this many pixels before reading: enough for a card filling a third of the picture. Our choice. */
const LONGEST_SIDE = 1600;

/** Reads the square code in a picture, off the screens' thread: a search takes longer than a frame. */
const service = {
  /** The code's text; nothing when none is found within so many milliseconds. The picture is used up. */
  read(picture: ImageBitmap, timeLimit: number): string | undefined {
    const { width, height } = picture;
    const scale = Math.min(1, LONGEST_SIDE / Math.max(width, height));
    const canvas = new OffscreenCanvas(Math.round(width * scale), Math.round(height * scale));
    const context = canvas.getContext('2d', { willReadFrequently: true });
    context?.drawImage(picture, 0, 0, canvas.width, canvas.height);
    picture.close();
    if (!context) return undefined;
    const { data } = context.getImageData(0, 0, canvas.width, canvas.height);
    try {
      return decodeQR({ width: canvas.width, height: canvas.height, data }, { timeLimit });
    } catch {
      return undefined;
    }
  },
};
export type CodeService = typeof service;

expose(service);
