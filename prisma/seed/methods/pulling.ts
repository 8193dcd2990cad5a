/** What the pulling methods share: room, rig, force, and how many specimens. */
export const PULLING_LIMITS = {
  minimumSpecimens: 5,
  maximumCvPercent: 10,
  gripBreakSharePercent: 30,
  timeToBreakS: { low: 8, high: 40 },
  ambientTemperatureC: { low: 18, high: 24 },
  ambientHumidityPercent: { low: 45, high: 75 },
};

/** Specimens that are pulled as they come from the spool. */
export const UNTREATED = { code: 'untreated', kind: 'breakingForce', treatment: null } as const;

export const PULLING_APPARATUS = [
  'Load frame, or force gauge on a screw stand, with a certificate that is valid on the bench day; the line breaks between 5 % and 95 % of its capacity',
  'Two capstan grips, smooth, of 25 mm radius, with a clamp at the tail',
  'Timer read to 0.1 s; thermometer and hygrometer at the rig',
  'Guard of clear sheet on both sides of the line',
];

export const PULLING_SETTINGS = [
  { name: 'Free length between the grips', value: '500', unit: 'mm' },
  { name: 'Speed of the moving grip', value: '300', unit: 'mm/min' },
  { name: 'Preload', value: '1', unit: 'N' },
  { name: 'Turns on each capstan', value: '5', unit: '' },
];

export const CONDITION_STEP =
  'Leave the spool for 24 hours in the room where it is pulled. Strip off the first 5 m. Strands of nylon lie in water of the room for two hours before the pull.';

export const MEAN_FORCE = {
  figure: 'Mean breaking force F',
  formula: 'F = (F₁ + F₂ + … + Fₙ) / n,  s² = Σ(Fᵢ − F)² / (n − 1)',
  where: 'Fᵢ is the highest force of specimen i, n the number of valid specimens; the 95 % interval is F ± t(0.975, n − 1) · s / √n',
};

export const PULLING_SOURCES = [
  'JCGM 100:2008, Guide to the expression of uncertainty in measurement: intervals and budget',
  'Grubbs 1969, Procedures for detecting outlying observations in samples: the outlier check; no specimen is removed by a computation',
  'Grips, free length and speed: common practice of tackle benches, no published standard covers a braided line of this fibre',
];
