const pdfFile = (bytes: Uint8Array, name: string): File =>
  new File([bytes as Uint8Array<ArrayBuffer>], name, { type: 'application/pdf' });

/** Whether this browser has a share sheet that takes a PDF. Without one there is nothing to offer. */
export function canSharePdf(): boolean {
  return (
    typeof navigator.canShare === 'function' && navigator.canShare({ files: [pdfFile(new Uint8Array(), 'card.pdf')] })
  );
}

/** Opens the device's share sheet with a PDF in it. A sheet that is closed without a choice is no failure. */
export async function sharePdf(bytes: Uint8Array, name: string): Promise<void> {
  try {
    await navigator.share({ files: [pdfFile(bytes, name)] });
  } catch (reason) {
    if (!(reason instanceof DOMException && reason.name === 'AbortError')) throw reason;
  }
}
