// Runs before the first paint and before every module. The content policy allows no code made from text, so zod is told not to try.
globalThis.__zod_globalConfig = { jitless: true };
try {
  const theme = localStorage.getItem('theme');
  if (theme) document.documentElement.dataset.theme = theme;
} catch {
  // Storage is closed to this page: the system's theme stands.
}
