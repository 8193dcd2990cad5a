/** The house's reference spools, oldest first; another lot is another control line. */
export const demoControlLines = [
  {
    code: 'C1',
    name: 'Reference braid',
    lot: 'NQ-23-04',
    words:
      'Eight-carrier braid of PE 1.0 from one machine run of 3 000 m, kept dark at the temperature of the loft. First half of the run.',
    season: '2024',
    since: '2023-09-06',
    forceN: 84.6,
  },
  {
    code: 'C2',
    name: 'Reference braid',
    lot: 'NQ-25-09',
    words: 'The spool after C1, of another run. It has a chart of its own.',
    season: '2026',
    since: '2025-09-03',
    forceN: 82.9,
  },
] as const;

/** The control line that is pulled on a day. */
export const controlLineOn = (day: string): (typeof demoControlLines)[number] =>
  demoControlLines.findLast(({ since }) => since <= day) ?? demoControlLines[0];
