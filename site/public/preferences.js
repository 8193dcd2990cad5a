// Runs before the first paint, so that a remembered theme or unit does not flash.
try {
  const theme = localStorage.getItem('theme');
  if (theme) document.documentElement.dataset.theme = theme;
  const units = localStorage.getItem('units');
  if (units) document.documentElement.dataset.units = units;
} catch {
  // Storage is closed to this page: the system's theme and SI units stand.
}
