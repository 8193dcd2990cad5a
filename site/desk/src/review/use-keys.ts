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
