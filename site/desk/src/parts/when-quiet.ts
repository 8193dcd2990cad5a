/** As long as this no key was pressed: nobody is in the middle of a number [ms]. */
const PAUSE_MS = 600;

/** Runs once nobody has typed for a moment, so that what opens takes no keystroke that was meant for the sheet. */
export function whenQuiet(run: () => void): void {
  let timer = setTimeout(end, PAUSE_MS);
  const wait = () => {
    clearTimeout(timer);
    timer = setTimeout(end, PAUSE_MS);
  };
  function end() {
    document.removeEventListener('keydown', wait, true);
    run();
  }
  document.addEventListener('keydown', wait, true);
}
