import { Worker } from 'node:worker_threads';
import { Injectable } from '@nestjs/common';
import type { Plan, PlanQuery } from '../contract/endpoints/planning.js';
import { Problem } from '../platform/errors/problem.js';
import { sha256 } from '../platform/identifiers/identifiers.js';
import type { SchemeEvidence } from '../reckoning/evidence/edition-evidence.js';
import type { PlanTask } from '../reckoning/results/plan-next-season.js';
import { seasonLearnt } from '../reckoning/results/season-basis.js';
import { ResultsNow } from '../releases/results-now.read-model.js';
import { boardProblems } from './board.errors.js';

/** TypeScript in a checkout, plain JavaScript in an image. */
const isTypeScript = import.meta.url.endsWith('.ts');
const THREAD = new URL(isTypeScript ? 'planning-thread.ts' : 'planning-thread.js', import.meta.url);
const LOADER = new URL('../../.config/load-typescript.mjs', import.meta.url).href;

/** What more rigs, testers, submissions or specimens would buy: simulated from what the edition shows as accepted now. One plan at a time. */
@Injectable()
export class PlanMoreTests {
  private last: Promise<unknown> = Promise.resolve();

  constructor(private readonly results: ResultsNow) {}

  async run(slug: string, { category: code, division, difference }: PlanQuery): Promise<Plan> {
    const { edition, ...computed } = await this.results.of(slug);
    const asked = edition.divisions?.find((one) => one.slug === division);
    const ranked = division === undefined ? edition : asked;
    const categories = ranked?.scheme?.rules.categories ?? [];
    const results = new Map([...computed.results].filter(([variant]) => asked?.variants.includes(variant) ?? true));
    const category = categories.find((one) => one.code === code);
    if (!category) {
      const only = edition.divisions ? edition.divisions.map((one) => `${one.slug}: ${codesOf(one.scheme)}`) : [codesOf(edition.scheme)];
      throw new Problem(boardProblems['editions/no-such-category'], `${slug} has no category ${code} there, only ${only.join('; ')}.`);
    }
    const learnt = seasonLearnt(category, { ...computed, results });
    if (!learnt) {
      const detail = `In ${code} of ${slug} fewer than two entries have a result that counts with an uncertainty.`;
      throw new Problem(boardProblems['editions/nothing-to-plan-from'], detail);
    }
    const task = {
      ...learnt,
      differencePercent: difference,
      digest: sha256(JSON.stringify([slug, ...(division ? [division] : []), code, difference, learnt])),
    };
    const next = this.last.then(() => inThread(task));
    this.last = next.catch(() => undefined);
    return { edition: slug, category: code, entries: learnt.basis.values.length, differencePercent: String(difference), ...(await next) };
  }
}

const codesOf = ({ rules }: SchemeEvidence): string => rules.categories.map((one) => one.code).join(', ');

type Answer = Omit<Plan, 'edition' | 'category' | 'entries' | 'differencePercent'>;

const inThread = (task: PlanTask): Promise<Answer> =>
  new Promise((resolve, reject) => {
    const thread = new Worker(THREAD, { workerData: task, execArgv: isTypeScript ? ['--import', LOADER] : [] });
    thread.once('message', resolve);
    thread.once('error', reject);
    thread.once('exit', (code) => reject(new Error(`The planning thread ended with ${code} before it answered.`)));
  });
