import type { Plan } from '../../api/contract/endpoints/planning.js';
import { sha256 } from '../../api/platform/identifiers/identifiers.js';
import type { Bundle } from '../../api/reckoning/documents/bundle.js';
import { contextOf } from '../../api/reckoning/documents/release-context.js';
import type { ReleaseInputs } from '../../api/reckoning/release-inputs.js';
import { randomStream } from '../../api/measurement/random/random-stream.js';
import { seedFromDigest } from '../../api/measurement/random/seed-from-digest.js';
import { expectSeason } from '../../api/measurement/ranking/planning/plan-season.js';
import { roundHalfEven } from '../../api/measurement/units/round-half-even.js';
import { seasonLearnt } from '../../api/reckoning/results/season-basis.js';
import { demoEditor } from '../../prisma/seed/demo-accounts.js';
import { HouseClient } from '../../prisma/seed/loader/house-client.js';

const [EDITION, DIVISION, CODE, DIFFERENCE] = ['2026', 'nylon', 'strength-honesty', 6] as const;

/** What a category of the division teaches a planner who takes in the same as a release. */
function learntFrom(inputs: ReleaseInputs) {
  const { computed, evidence } = contextOf(inputs);
  const { scheme, variants } = evidence.edition.divisions!.find(({ slug }) => slug === DIVISION)!;
  const category = scheme.rules.categories.find(({ code }) => code === CODE)!;
  return seasonLearnt(category, { ...computed, results: new Map([...computed.results].filter(([slug]) => variants.includes(slug))) })!;
}

/** The planner of a house against its published bundle. */
export function plannedFromReleased(urlOf: () => string): void {
  test('more tests are planned from what the release took in, with what the seasons before tell of rigs, testers and spools', async () => {
    const editor = await HouseClient.signedIn(urlOf(), demoEditor);
    const { season, expected } = await editor.get<Plan>(
      `/v1/editions/${EDITION}/plan?category=${CODE}&division=${DIVISION}&difference=${DIFFERENCE}`,
    );
    await editor.signOut();
    const { inputs } = (await (await fetch(`${urlOf()}/v1/releases/${EDITION}/1/bundle.json`)).json()) as Bundle;
    const learnt = learntFrom(inputs);
    expect(learnt.basis.spreads).not.toEqual(learntFrom({ ...inputs, earlier: [] }).basis.spreads);
    const digest = sha256(JSON.stringify([EDITION, DIVISION, CODE, DIFFERENCE, learnt]));
    const found = expectSeason(learnt.design, learnt.basis, DIFFERENCE, randomStream(seedFromDigest(digest)));
    expect(season).toEqual(learnt.design);
    expect(expected).toEqual({
      width: roundHalfEven(found.width, 1),
      couldBeFirst: roundHalfEven(found.couldBeFirst, 1),
      powerPercent: roundHalfEven(100 * found.power, 0),
    });
  });
}
