import type { Page } from '@playwright/test';
import type { Answers } from '../../src/flow/answers.ts';

/** The draft as it lies in the browser's database. */
export interface StoredDraft {
  readonly interview: { readonly answers: Answers; readonly place: string };
}

/** What the database holds of an interview under way; `undefined` when there is none. */
export const storedDraft = (page: Page): Promise<StoredDraft | undefined> =>
  page.evaluate(
    () =>
      new Promise<StoredDraft | undefined>((resolve, reject) => {
        const opening = indexedDB.open('lacewing');
        opening.onerror = () => reject(opening.error);
        opening.onsuccess = () => {
          const asked = opening.result.transaction('draft').objectStore('draft').get('draft');
          asked.onerror = () => reject(asked.error);
          asked.onsuccess = () => {
            opening.result.close();
            resolve(asked.result);
          };
        };
      }),
  );

/** Lays something where the draft is looked for. The kiosk has to have been open once. */
export const plantDraft = (page: Page, record: unknown): Promise<void> =>
  page.evaluate(
    (planted) =>
      new Promise<void>((resolve, reject) => {
        const opening = indexedDB.open('lacewing');
        opening.onerror = () => reject(opening.error);
        opening.onsuccess = () => {
          const work = opening.result.transaction('draft', 'readwrite');
          work.objectStore('draft').put(planted, 'draft');
          work.onerror = () => reject(work.error);
          work.oncomplete = () => {
            opening.result.close();
            resolve();
          };
        };
      }),
    record,
  );
