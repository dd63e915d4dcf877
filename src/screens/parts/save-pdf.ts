import { saveFile } from './save-file.ts';

/** Hands a PDF to the browser as a download. */
export const savePdf = (bytes: Uint8Array, name: string): void =>
  saveFile(new Blob([bytes as Uint8Array<ArrayBuffer>], { type: 'application/pdf' }), name);
