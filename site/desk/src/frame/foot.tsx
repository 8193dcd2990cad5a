import { ThemeChoice } from './theme-choice.js';

export function Foot() {
  return (
    <footer>
      <ul class="links">
        <li>
          <a href="/">Results</a>
        </li>
        <li>
          <a href="/read/">How to read them</a>
        </li>
        <li>
          <ThemeChoice />
        </li>
      </ul>
    </footer>
  );
}
