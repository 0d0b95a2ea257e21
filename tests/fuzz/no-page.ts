/** Stand-ins for the little of a page that the readers of its stores look at as they load. Imported before them. */
const kept = new Map<string, string>();
const store = { getItem: (key: string) => kept.get(key) ?? null, setItem: (key: string, value: string) => void kept.set(key, value), removeItem: (key: string) => void kept.delete(key) };
Object.assign(globalThis, {
  screen: { width: 1280, height: 720 }, innerWidth: 1280, innerHeight: 720, devicePixelRatio: 1, localStorage: store, sessionStorage: store,
  document: { documentElement: { dataset: {} }, addEventListener: () => undefined }, addEventListener: () => undefined, removeEventListener: () => undefined,
  matchMedia: () => ({ matches: false, addEventListener: () => undefined }),
});
