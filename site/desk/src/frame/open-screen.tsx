import { render } from 'preact';
import type { ComponentType } from 'preact';
import type { Role } from '../../../../api/contract/roles.js';
import { Frame } from './frame.js';
import type { Account } from './account.js';

export interface ScreenProps {
  readonly account: Account;
}

export interface ScreenOptions {
  /** Who works here; everybody signed in where none is named. */
  readonly roles?: readonly Role[];
}

/** Puts a screen into its page, for those who work there; whoever is not signed in is asked first, and stays at the address. */
export function openScreen(Screen: ComponentType<ScreenProps>, options: ScreenOptions = {}): void {
  const place = document.getElementById('desk');
  if (place) render(<Frame Screen={Screen} roles={options.roles ?? []} />, place);
}
