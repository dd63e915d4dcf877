import type { Area, Store } from './store.ts';

/** Keeps everything in memory: for a browser that refuses storage, and for tests. */
export function memoryStore(): Store {
  const areas = new Map<Area, Map<string, unknown>>();
  const area = (name: Area): Map<string, unknown> => {
    const known = areas.get(name);
    if (known) return known;
    const fresh = new Map<string, unknown>();
    areas.set(name, fresh);
    return fresh;
  };
  return {
    lasting: false,
    get: async <T>(name: Area, key: string) => structuredClone(area(name).get(key)) as T | undefined,
    put: async (name, key, value) => void area(name).set(key, structuredClone(value)),
    delete: async (name, key) => void area(name).delete(key),
    keys: async (name) => [...area(name).keys()],
    all: async <T>(name: Area) => structuredClone([...area(name).values()]) as T[],
    update: async <T>(name: Area, key: string, change: (old: T | undefined) => T | undefined) => {
      const next = change(structuredClone(area(name).get(key)) as T | undefined);
      if (next !== undefined) area(name).set(key, structuredClone(next));
      return next;
    },
  };
}
