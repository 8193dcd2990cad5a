/** What stands on every page about pulling a line to its break. */
export const PULLING_CAUTIONS = [
  'A line under load stores energy and whips when it parts: wear eye protection, close the guard between yourself and the line, and stay out of its path.',
  'Wear gloves to handle a loaded braid; it cuts to the bone. Never wind it round a hand.',
  "Keep to the limits of the rig's maker and to the rules of the place you work in. Nobody pulls alone.",
  'The figures describe the spools tested and are no warranty. They are no basis for lifting, climbing, towing or rescue: use rated equipment and qualified people for those.',
];

export const MEASURING_CAUTIONS = [
  'The hanging weight falls when the line slips: keep feet and faces from under it.',
  'The figures describe the spools tested and are no warranty.',
];
