import type { DemoContent, DemoSpecimen } from '../bench/demo-content.js';
import { PLAINLY_ACCEPTED } from './hand-in.js';
import type { DemoHandIn, DemoReview } from './hand-in.js';
import type { Twist } from './story.js';

const accepted = (words: string | null, setAside: readonly { specimen: number; reason: string }[] = []): DemoReview => ({
  decision: 'accepted',
  setAside,
  words,
});

/** Given back with a question about the unit, and handed in again as it was read. */
const asked = ({ question, answer }: Extract<Twist, { kind: 'unitSlip' }>, content: DemoContent): DemoReview => ({
  decision: 'returned',
  kind: 'unit',
  specimens: content.specimens.map(({ number }) => number),
  question,
  reply: { answer, corrected: content },
});

/** Changes a plain submission into one of the story's; a file that is handed in twice becomes two. */
export function applyTwist(plain: DemoHandIn, twist: Twist): DemoHandIn[] {
  const { content } = plain;
  switch (twist.kind) {
    case 'unitSlip':
      return [{ ...plain, content: withUnit(content, 'lbf'), review: asked(twist, content) }];
    case 'gripBreaks':
      return [{ ...plain, content: withBreaksAtGrip(content, twist.specimens), review: accepted(twist.words) }];
    case 'outlier':
      return [{ ...plain, content: withReading(content, twist.specimen, twist.reads), review: accepted(twist.words) }];
    case 'setAside':
      return [
        {
          ...plain,
          content: { ...withReading(content, twist.specimen, twist.reads), note: twist.note },
          review: accepted('The specimen that the note tells of is set aside.', [{ specimen: twist.specimen, reason: twist.reason }]),
        },
      ];
    case 'seenLabel':
      return [{ ...plain, content: { ...content, seenLabel: true, note: twist.note }, review: accepted(twist.words) }];
    case 'handedInTwice':
      return [
        { ...plain, review: PLAINLY_ACCEPTED },
        {
          ...plain,
          // Without a word on it the record would not take the same content twice.
          content: { ...content, note: twist.note },
          task: { ...plain.task, key: `${plain.task.key}/twice` },
          review: { decision: 'refused', reason: twist.reason },
        },
      ];
  }
}

const mapForces = (content: DemoContent, change: (specimen: DemoSpecimen) => DemoSpecimen): DemoContent => ({
  ...content,
  specimens: content.specimens.map(change),
});

/** The numbers stay as displayed, under the wrong unit. */
const withUnit = (content: DemoContent, unit: string): DemoContent =>
  mapForces(content, (specimen) => ({
    ...specimen,
    readings: specimen.readings.map((reading) => (reading.role === 'breakingForce' ? { ...reading, unit } : reading)),
  }));

/** Exactly these parted at a grip, a little early. */
function withBreaksAtGrip(content: DemoContent, numbers: readonly number[]): DemoContent {
  const marked = numbers.reduce((changed, number) => withReading(changed, number, 0.9), content);
  return mapForces(marked, ({ number, condition = 'untreated', readings }) =>
    numbers.includes(number)
      ? { number, condition, readings, validity: 'invalid', invalidReason: 'brokeAtGrip' }
      : { number, condition, readings, validity: 'valid' },
  );
}

/**
 * One valid specimen that reads a share of the mean of its condition, with the digits of the display.
 * @param reads share of the mean [1]
 */
function withReading(content: DemoContent, number: number, reads: number): DemoContent {
  const one = content.specimens.find((specimen) => specimen.number === number);
  const others = content.specimens.filter(
    (specimen) => specimen.condition === one?.condition && specimen.number !== number && specimen.validity === 'valid',
  );
  const forces = others.flatMap(({ readings }) => readings.filter(({ role }) => role === 'breakingForce'));
  const mean = forces.reduce((sum, { value }) => sum + Number(value), 0) / forces.length;
  const places = forces[0]?.value.split('.')[1]?.length ?? 1;
  return mapForces(content, (specimen) => {
    if (specimen.number !== number) return specimen;
    const readings = specimen.readings.map((reading) =>
      reading.role === 'breakingForce' ? { ...reading, value: (mean * reads).toFixed(places) } : reading,
    );
    return { number, condition: specimen.condition, readings, validity: 'valid' };
  });
}
