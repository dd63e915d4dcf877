/** Hands a file to the browser as a download, by Blob: windows opened by a script are blocked on kiosks. */
export function saveFile(file: Blob, name: string): void {
  const url = URL.createObjectURL(file);
  const link = document.createElement('a');
  link.href = url;
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(url), LONG_ENOUGH);
}

/** Milliseconds a browser may take to start a download. From memory. */
const LONG_ENOUGH = 60_000;
