/** A season from an empty house over HTTP, in which everything that people get wrong is got wrong, and put right. */
import { ReleaseWork } from '../../api/releases/publication/release-work.js';
import { ReleasesModule } from '../../api/releases/releases.module.js';
import { benchDays } from './mistakes/bench-days.js';
import { decisions } from './mistakes/decisions.js';
import { fittingOut } from './mistakes/fitting-out.js';
import { story } from './mistakes/world.js';

beforeAll(() => story.t.app.select(ReleasesModule).get(ReleaseWork).start(false));
afterAll(() => story.t.close());

fittingOut();
benchDays();
decisions();

test('every refusal led on, in words for the one who got it', () => {
  const { requests, refusals, taken } = story;
  process.stdout.write(
    `A season of mistakes: ${requests} requests, ${refusals.length} refusals, none without a way on; ${taken.length} mistakes that were taken, and put right.\n`,
  );
  expect(refusals.filter(({ wayOn }) => !wayOn)).toEqual([]);
  // More than that it was refused: a sentence of its own, with what to do.
  expect(refusals.filter(({ says }) => says.split(' ').length < 8)).toEqual([]);
  expect([refusals.length, taken.length]).toEqual([35, 19]);
});
