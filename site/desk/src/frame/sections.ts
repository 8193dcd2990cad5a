import type { Role } from '../../../../api/contract/roles.js';

export interface Section {
  readonly path: string;
  readonly name: string;
  readonly roles: readonly Role[];
}

/** The screens in the masthead, in the order of the work. */
export const SECTIONS: readonly Section[] = [
  { path: '/desk/bench/', name: 'Bench day', roles: ['tester'] },
  { path: '/desk/submissions/', name: 'Submissions', roles: ['tester'] },
  { path: '/desk/review/', name: 'Review', roles: ['reviewer'] },
  { path: '/desk/rigs/', name: 'Agreement', roles: ['tester', 'reviewer', 'editor'] },
  { path: '/desk/season/', name: 'Season', roles: ['editor'] },
  { path: '/desk/catalogue/', name: 'Catalogue', roles: ['editor'] },
  { path: '/desk/methods/', name: 'Methods', roles: ['editor'] },
  { path: '/desk/proposals/', name: 'Proposals', roles: ['reviewer', 'editor'] },
  { path: '/desk/statements/', name: 'Statements', roles: ['editor', 'admin'] },
  { path: '/desk/house/', name: 'House', roles: ['admin'] },
];
