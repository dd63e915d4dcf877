import { type IDBPDatabase, openDB } from 'idb';
import { memoryStore } from './memory-store.ts';
import { AREAS, type Area, type Store } from './store.ts';

const NAME = 'lacewing';
const VERSION = 1;

/**
 * The browser's database, or memory where it is refused.
 *
 * Writes ask for `strict` durability: the browser reports them done once they are handed to the disk. Nothing is
 * claimed about power loss.
 */
export async function openStore(): Promise<Store> {
  try {
    const database = await openDB(NAME, VERSION, {
      upgrade: (db) => {
        for (const area of AREAS) if (!db.objectStoreNames.contains(area)) db.createObjectStore(area);
      },
    });
    return browserStore(database);
  } catch {
    return memoryStore();
  }
}

function browserStore(database: IDBPDatabase): Store {
  // Committed in the same breath: left to itself the browser waits for the page to hear of each write first, and a page
  // that is busy painting the next question hears late.
  const write = (area: Area) => database.transaction(area, 'readwrite', { durability: 'strict' });
  return {
    lasting: true,
    get: <T>(area: Area, key: string) => database.get(area, key) as Promise<T | undefined>,
    put: async (area, key, value) => {
      const work = write(area);
      const put = work.store.put(value, key);
      work.commit();
      await Promise.all([put, work.done]);
    },
    delete: async (area, key) => {
      const work = write(area);
      const gone = work.store.delete(key);
      work.commit();
      await Promise.all([gone, work.done]);
    },
    all: <T>(area: Area) => database.getAll(area) as Promise<T[]>,
    keys: (area) => database.getAllKeys(area) as Promise<string[]>,
    update: async <T>(area: Area, key: string, change: (old: T | undefined) => T | undefined) => {
      const work = write(area);
      const next = change((await work.store.get(key)) as T | undefined);
      if (next !== undefined) await work.store.put(next, key);
      await work.done;
      return next;
    },
  };
}
