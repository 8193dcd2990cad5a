import { remember } from '../../../look/remember.js';

/** The same choice as on the public pages, kept under the same name. */
export function ThemeChoice() {
  return (
    <label>
      Theme{' '}
      <select value={document.documentElement.dataset['theme'] ?? ''} onChange={(event) => remember('theme', event.currentTarget.value)}>
        <option value="">as the system</option>
        <option value="light">light</option>
        <option value="dark">dark</option>
      </select>
    </label>
  );
}
