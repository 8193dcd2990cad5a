import { declareProblems } from '../platform/errors/problem.js';

export const interestProblems = declareProblems({
  'interests/unknown-maker': { status: 422, title: 'No maker has this slug', explains: 'Use the slug of a maker in the catalogue.' },
});
