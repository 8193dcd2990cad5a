import { useEffect } from 'preact/hooks';

/** Single keys that act while nobody is typing. */
export function useKeys(acts: Readonly<Record<string, () => void>>): void {
  useEffect(() => {
    const press = (event: KeyboardEvent) => {
      const isTyping = event.target instanceof HTMLElement && event.target.closest('input, textarea, select, dialog') !== null;
      const act = acts[event.key];
      if (isTyping || !act || event.ctrlKey || event.metaKey || event.altKey) return;
      event.preventDefault();
      act();
    };
    document.addEventListener('keydown', press);
    return () => document.removeEventListener('keydown', press);
  });
}

/** Goes to the next of these places, and from the last to the first. */
export function focusNext(selector: string): void {
  const places = [...document.querySelectorAll<HTMLElement>(selector)];
  places[(places.findIndex((one) => one === document.activeElement) + 1) % places.length]?.focus();
}

/** Opens what is folded, or folds it again, and goes there. */
export function toggle(id: string): void {
  const folded = document.getElementById(id);
  if (!(folded instanceof HTMLDetailsElement)) return;
  folded.open = !folded.open;
  folded.querySelector('summary')?.focus();
}
