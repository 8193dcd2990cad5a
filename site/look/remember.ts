/** Sets a preference on the page and keeps it for the next one; an empty value forgets it. */
export function remember(name: 'theme' | 'units', value: string): void {
  if (value) document.documentElement.dataset[name] = value;
  else document.documentElement.removeAttribute(`data-${name}`);
  try {
    if (value) localStorage.setItem(name, value);
    else localStorage.removeItem(name);
  } catch {
    // Storage is closed to this page: the choice holds until the reader leaves it.
  }
}
