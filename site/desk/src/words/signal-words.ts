const SIGNALS: Readonly<Record<string, string>> = {
  oneBeyond3Sigma: 'one beyond 3σ',
  twoOfThreeBeyond2Sigma: 'two of three beyond 2σ',
  fourOfFiveBeyond1Sigma: 'four of five beyond 1σ',
  eightOnOneSide: 'eight on one side',
};

/** Run rules in words; an unknown one, from a later version of the program, shows as it is written. */
export const signalWords = (signals: readonly string[]): string => signals.map((signal) => SIGNALS[signal] ?? signal).join(', ');
