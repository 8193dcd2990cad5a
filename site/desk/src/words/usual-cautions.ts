/** For work under load, whatever the method. */
export const USUAL_CAUTIONS: readonly string[] = [
  'A line under load whips when it parts: eye protection on, guard closed, gloves for loaded braid, nobody in line with the pull.',
  'Stay within the limits of the rig’s maker; your local rules stand above all of this.',
];
