import type { DemoVariant } from '../house/variants.js';

/** One winter at the bench. */
export interface Season {
  readonly slug: string;
  readonly name: string;
  readonly previous: string | null;
  readonly opensOn: string;
  readonly closesOn: string;
  /** Saturdays, a fortnight apart. */
  readonly benchDays: readonly string[];
  readonly publishedOn: string | null;
}

const DAY_MS = 86_400_000;
const BENCH_DAYS = 10;

/** Calendar day some days later. */
export const daysAfter = (day: string, days: number): string => new Date(Date.parse(day) + days * DAY_MS).toISOString().slice(0, 10);

function season(year: number, firstSaturday: string, benchDays: number, publishedOn: string | null): Season {
  return {
    slug: String(year),
    name: `Winter ${year - 1}/${String(year).slice(2)}`,
    previous: year === 2024 ? null : String(year - 1),
    opensOn: daysAfter(firstSaturday, -7),
    closesOn: daysAfter(firstSaturday, 14 * BENCH_DAYS - 7),
    benchDays: Array.from({ length: benchDays }, (_, index) => daysAfter(firstSaturday, 14 * index)),
    publishedOn,
  };
}

/** Three winters that are published, and the one that is going on. */
export const demoSeasons = [
  season(2024, '2023-10-14', BENCH_DAYS, '2024-03-02'),
  season(2025, '2024-10-12', BENCH_DAYS, '2025-03-01'),
  season(2026, '2025-10-11', BENCH_DAYS, '2026-03-07'),
  season(2027, '2026-10-10', 4, null),
] as const;

/** First winter of the variants that came to the shops later. */
const FIRST_SEASON: Readonly<Record<string, string>> = {
  'skerrygrip-12-pe-1-5': '2026',
  'marshbell-0-25': '2025',
  'emberfuse-pe-1-0': '2025',
};
/** Winters in which a variant was not entered. */
const LEFT_OUT: Readonly<Record<string, readonly string[]>> = { 'ebbhollow-16-pe-2-0': ['2025'], 'tidelace-8-pe-1-2': ['2027'] };

/** Variants entered in a season. */
export const entriesOf = (variants: readonly DemoVariant[], season: Season): DemoVariant[] =>
  variants.filter(({ slug }) => (FIRST_SEASON[slug] ?? '2024') <= season.slug && LEFT_OUT[slug]?.includes(season.slug) !== true);
