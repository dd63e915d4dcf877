/**
 * Prints a page of HTML through the browser's own dialog from a hidden frame, so that the kiosk's screen stays as it is.
 * The frame goes when printing is over.
 */
export function printPage(page: string): void {
  const url = URL.createObjectURL(new Blob([page], { type: 'text/html;charset=utf-8' }));
  const frame = document.createElement('iframe');
  // Out of sight but laid out: some browsers print nothing of a frame that is not displayed.
  frame.className = 'print-frame';
  frame.tabIndex = -1;
  frame.ariaHidden = 'true';
  frame.addEventListener('load', () => {
    const shown = frame.contentWindow;
    if (!shown) return;
    shown.addEventListener('afterprint', () => {
      frame.remove();
      URL.revokeObjectURL(url);
    });
    shown.focus();
    shown.print();
  });
  frame.src = url;
  document.body.append(frame);
}
