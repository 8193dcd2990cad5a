import { declareProblems } from '../platform/errors/problem.js';

export const editionProblems = declareProblems({
  'editions/unknown-reference': {
    status: 422,
    title: 'Something that the edition names is not on record',
    explains:
      'Scheme, method versions, variants and the edition before must exist. The detail names what is missing: correct its name, or add it first.',
  },
  'editions/retired-entry': {
    status: 422,
    title: 'A retired variant enters no edition',
    explains:
      'The variant, its line or its maker is retired. Take it into use again (DELETE /v1/catalogue/…/retirement), or leave it out. The detail names it.',
  },
  'editions/wrong-state': {
    status: 409,
    title: 'The edition is not in the state that this needs',
    explains:
      'An edition goes from planned to open, closed and published. The detail says where it stands and where it should. Take the step that leads there first; what an open one can still take is an amendment (POST /v1/editions/{edition}/amendments), what a published one can is another revision.',
  },
  'editions/cannot-count': {
    status: 422,
    title: 'Categories of the scheme could never have a result',
    explains:
      'Each category needs a pinned version of its method that yields its series; a retention needs untreated pulls in the same version, a stress diameters that make a cross-section. The errors name the category, what is missing and what to do: add a version that has it, or change the scheme.',
  },
  'editions/nothing-to-open': {
    status: 409,
    title: 'Something stands in the way of opening the edition',
    explains:
      'The errors list everything that stands in the way and what to do about each; GET /v1/editions/{edition}/board lists the same.',
  },
  'editions/follows-itself': {
    status: 422,
    title: 'An edition does not come before itself',
    explains:
      'Movement is told against an earlier edition, whose own line of earlier editions ends. The detail shows the circle; name another edition before it, or none.',
  },
  'editions/precedes-another': {
    status: 409,
    title: 'Another edition is told against this one',
    explains: 'Change what the other edition follows first (PATCH /v1/editions/{edition} with previous); the detail names it.',
  },
  'editions/no-such-division': {
    status: 422,
    title: 'The edition has no such division',
    explains: 'Name one of its divisions; leave it out where everything is compared with everything. The detail lists them.',
  },
  'editions/interest': {
    status: 409,
    title: 'You have declared an interest in this maker',
    explains: 'Somebody without a tie to the maker decides on exclusions of its variants and on their division. Ask another editor.',
  },
});
