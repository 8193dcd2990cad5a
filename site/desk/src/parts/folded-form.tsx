import type { ComponentChildren } from 'preact';
import { useRef } from 'preact/hooks';

interface Props {
  readonly what: string;
  /** How many there are when the page opens. */
  readonly count: number;
  readonly children: ComponentChildren;
}

/** A form below a list: folded where the list has something, open where it makes the first; and it stays so while one adds. */
export function FoldedForm({ what, count, children }: Props) {
  const isFirst = useRef(count === 0);
  return (
    <details open={isFirst.current}>
      <summary>{what}</summary>
      {children}
    </details>
  );
}
