import type { ComponentChildren } from 'preact';
import { isWide } from './is-wide.js';
import { openAround } from './open-around.js';

interface Props {
  readonly heading: string;
  /** What is worth knowing while it is folded. */
  readonly told?: string;
  /** Part of the page, for whoever is sent to it. */
  readonly id?: string;
  readonly children: ComponentChildren;
}

/** A part of a page: open where there is room; on a phone its heading alone, until it is pressed. */
export const Folded = ({ heading, told = '', id, children }: Props) => (
  <details class="part" open={isWide()}>
    <summary {...(id !== undefined && { id })}>
      <h2>{heading}</h2> {told !== '' && <span class="soft">{told}</span>}
    </summary>
    {children}
  </details>
);

/** Opens what a part of the page lies in, and goes there. */
export function goToPart(id: string): void {
  const part = document.getElementById(id);
  openAround(part);
  part?.focus();
}
