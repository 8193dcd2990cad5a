/** A version of a method as its form shows it, and back. Pure. */
import type { MethodVersion, MethodVersionRequest } from '../../../../api/contract/endpoints/methods.js';
import type { FieldOptions } from '../parts/field-options.js';

const ONE_A_LINE = 'One a line.';
const lined = (items: readonly string[]): string => items.join('\n');
const linesOf = (text: unknown): string[] =>
  String(text)
    .split('\n')
    .map((line) => line.trim())
    .filter((line) => line !== '');

type Setting = MethodVersion['parameters']['settings'][number];
const settingText = ({ name, value, unit }: Setting): string => `${name}: ${value} ${unit}`.trim();

/** "gauge length: 500 mm": name, value, unit; what is no number is a value without one. */
function settingOf(line: string): Setting {
  const [, name = line, value = '', unit = ''] = /^(.+?):\s*([-+]?\d[\d.,]*)\s*(.*)$/.exec(line) ?? /^(.+?):\s*(.+)$/.exec(line) ?? [];
  return { name, value, unit };
}

const number = (name: string, label: string, value: number | null, hint?: string): FieldOptions => ({
  ...{ name, label, kind: 'number', value: value === null ? '' : String(value) },
  ...(hint !== undefined && { hint }),
});
const words = (name: string, label: string, value: string, hint?: string): FieldOptions => ({
  ...{ name, label, kind: 'words', value },
  ...(hint !== undefined && { hint }),
});

const ends = (
  name: string,
  label: string,
  unit: string,
  { low, high }: { readonly low: number; readonly high: number },
): FieldOptions[] => [
  number(`limits/${name}/low`, `${label} from, ${unit}`, low),
  number(`limits/${name}/high`, `${label} to, ${unit}`, high),
];

/** What can be written anew, filled with what the version says that it begins from. */
export const versionFields = ({ wording, limits, parameters, series }: MethodVersion): FieldOptions[] => [
  words('wording/purpose', 'What it is for', wording.purpose),
  words('wording/apparatus', 'What is needed', lined(wording.apparatus), ONE_A_LINE),
  words('wording/steps', 'What is done, in order', lined(wording.steps), ONE_A_LINE),
  ...series.flatMap(seriesFields),
  number('limits/minimumSpecimens', 'Valid specimens, at least', limits.minimumSpecimens),
  number('limits/maximumCvPercent', 'Coefficient of variation, at most, %', limits.maximumCvPercent),
  number('limits/gripBreakSharePercent', 'Broken at the grip, at most, %', limits.gripBreakSharePercent),
  ...(limits.timeToBreakS ? ends('timeToBreakS', 'Time to break', 's', limits.timeToBreakS) : []),
  ...ends('ambientTemperatureC', 'Air', '°C', limits.ambientTemperatureC),
  ...ends('ambientHumidityPercent', 'Relative humidity', '%', limits.ambientHumidityPercent),
  {
    ...number(
      'parameters/reproducibilityPercent',
      'Other rigs, testers and days differ by, %',
      parameters.reproducibilityPercent,
      'Relative standard deviation of results of one line. Where an edition is too small to tell, places rest on it; without it there are none.',
    ),
    isOptional: true,
  },
  words(
    'parameters/settings',
    'Settings of the rig',
    lined(parameters.settings.map(settingText)),
    'One a line, as in “gauge length: 500 mm”.',
  ),
  words('wording/cautions', 'Cautions', lined(wording.cautions), ONE_A_LINE),
  words('wording/sources', 'Sources', lined(wording.sources), 'One a line: published ones, or “common practice”.'),
];

function seriesFields(one: MethodVersion['series'][number], index: number): FieldOptions[] {
  const at = `series/${index}`;
  if (one.kind === 'diameterAlongStations') return [number(`${at}/stations`, 'Stations on each specimen, at least', one.stations)];
  if (one.kind === 'linearDensity' || !one.treatment) return [];
  const what = one.treatment.kind === 'knot' ? 'knot' : 'abrasion';
  return [
    { name: `${at}/treatment/name`, label: `Name of the ${what}`, value: one.treatment.name },
    words(`${at}/treatment/words`, what === 'knot' ? 'How it is tied' : 'How it is rubbed', one.treatment.words),
  ];
}

interface Entered {
  readonly wording: Record<string, unknown>;
  readonly limits: Record<string, unknown>;
  readonly parameters: Record<string, unknown>;
  readonly series?: Readonly<Record<number, object>>;
}

/** The request that the fields make; what they do not show goes on as it was. */
export function versionOf(
  base: MethodVersion,
  entered: Entered,
): Omit<MethodVersionRequest, 'number' | 'effectiveFrom' | 'isComparableWithPrevious'> {
  const { wording, parameters } = entered;
  const asked = {
    effectiveUntil: null,
    limits: { timeToBreakS: null, ...entered.limits },
    series: base.series.map((one, index) => withEntered(one, entered.series?.[index] ?? {})),
    parameters: { ...base.parameters, ...parameters, settings: linesOf(parameters['settings']).map(settingOf) },
    checks: base.checks,
    wording: {
      ...base.wording,
      ...wording,
      ...Object.fromEntries(['apparatus', 'steps', 'cautions', 'sources'].map((name) => [name, linesOf(wording[name])])),
    },
  };
  return asked as Omit<MethodVersionRequest, 'number' | 'effectiveFrom' | 'isComparableWithPrevious'>;
}

const withEntered = (one: MethodVersion['series'][number], entered: { readonly treatment?: object }): object =>
  'treatment' in one && one.treatment ? { ...one, treatment: { ...one.treatment, ...entered.treatment } } : { ...one, ...entered };
