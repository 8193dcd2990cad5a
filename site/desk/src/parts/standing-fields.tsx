import type { ComponentChildren } from 'preact';
import { useLayoutEffect, useRef, useState } from 'preact/hooks';

interface Props {
  /** Whether all of it is said already. */
  readonly isKnown: boolean;
  readonly children: ComponentChildren;
}

/** What holds for many forms in a row: one line that says it, and opens. */
export function StandingFields({ isKnown, children }: Props) {
  const folded = useRef<HTMLDetailsElement>(null);
  const isOpenAtFirst = useRef(!isKnown);
  const [chosen, setChosen] = useState('');
  const tell = () => {
    const fields = [...(folded.current?.querySelectorAll<HTMLInputElement | HTMLSelectElement>('input, select') ?? [])];
    setChosen(fields.map((one) => ('selectedOptions' in one ? (one.selectedOptions[0]?.textContent ?? '') : one.value)).join(' · '));
  };
  useLayoutEffect(tell);
  return (
    <details ref={folded} class="standing" open={isOpenAtFirst.current} onInput={tell}>
      <summary>{chosen}</summary>
      <div class="form">{children}</div>
    </details>
  );
}
