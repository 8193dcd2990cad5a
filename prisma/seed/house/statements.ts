/** What the invented house says of itself, and beside its figures. */
export const demoHouseStatement = {
  contact: 'North Quay Line Trials, The Old Net Loft, North Quay. trials@northquay.example',
  people: [
    { name: 'Five testers of the club', does: 'pull, measure and abrade, each on the own bench' },
    { name: 'Two reviewers of the club', does: 'look at every submission but their own' },
    { name: 'An editor', does: 'buys the spools, keeps the catalogue, publishes' },
  ],
  funding: 'Members pay by their subscription. No maker or seller pays for a test, a place or a page.',
  interests:
    'One tester has said that a relative sells line; what that tester hands in of this maker is marked. Spools that makers sent are marked too.',
  rightOfReply:
    'A maker hears of nothing before it is published, and may reply at any time: trials@northquay.example. The reply stands word by word beside the figure that it answers, from the next revision on.',
};

/** What no figure settles; of what is made so. */
export const demoCaveats = [
  {
    construction: 'fused',
    words:
      'How long a fused line keeps its figures in use is not tested here: every specimen was new, and the bond wears with the coating.',
  },
  {
    construction: 'hollowCore',
    words: 'The coating of hollow-core lines could not be judged: it came off in the abrader before a cycle could be counted.',
  },
] as const;
