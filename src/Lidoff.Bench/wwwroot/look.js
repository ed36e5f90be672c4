// Light or dark, large or not: set before the first paint, so that a dim bench is not flashed at. Remembered in this browser.
(() => {
  const root = document.documentElement;
  const kept = (key) => { try { return localStorage.getItem(key); } catch { return null; } };
  for (const key of ['theme', 'far']) if (kept(`look-${key}`)) root.dataset[key] = kept(`look-${key}`);
})();
