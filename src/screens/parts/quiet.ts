/** The longest it waits, milliseconds: a page that never rests must still get what it will need. */
const LONGEST = 2000;
/** Where the browser does not say when it rests. A tap's page is painted well within it. */
const A_WHILE = 200;

/** Resolves when the page has nothing to do, so that what is fetched ahead does not stand between a tap and its page. */
export const quiet = (): Promise<void> =>
  new Promise((resolve) => {
    if (typeof requestIdleCallback === 'function') requestIdleCallback(() => resolve(), { timeout: LONGEST });
    else setTimeout(resolve, A_WHILE);
  });
