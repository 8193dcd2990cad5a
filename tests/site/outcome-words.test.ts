import { methodsSentence } from '../../site/src/words/change-sentences.js';
import { outcomeWords } from '../../site/src/words/outcome-words.js';

test('a placed variant is told as to a friend: place, how sure, where strong and where weak, how it moved', () => {
  const category = (name: string, place: number | null) => ({ category: { name }, row: { place } });
  const told = (own: object, categories: object[], editions = 1) => {
    const overall = {
      place: 4,
      isTied: false,
      placeInterval: { low: 2, high: 9 },
      movement: { kind: 'moved', places: 3, runAtTop: 0 },
      ...own,
    };
    const document = { overall, categories, history: Array.from({ length: editions }) };
    return outcomeWords(document as unknown as Parameters<typeof outcomeWords>[0], 41, 'Braided, Winter');
  };
  expect(told({ couldBeFirst: true }, [category('Knot retention, Palomar', 30), category('FG', null), category('Stress', 2)], 2)).toBe(
    'It came in place 4 of 41 in Braided, Winter and could be the best; the evidence allows place 2 to 9. ' +
      'Highest in stress, place 2; lowest in knot retention (Palomar), place 30. Since the last edition: up 3.',
  );
  expect(told({ place: 1, placeInterval: null }, [category('Stress', 2), category('Knot', 2)])).toBe(
    'It came first of 41 in Braided, Winter; how sure that place is was not stated for this edition.',
  );
  expect(told({ isTied: true, couldBeFirst: false }, [])).toBe(
    'It shares place 4 of 41 in Braided, Winter; the evidence allows place 2 to 9.',
  );
});

test('what the methods changed is told once for all categories that it holds of', () => {
  const category = (name: string, comparability: string) => ({ name, comparability });
  const told = (...categories: object[]) => methodsSentence({ scheme: { categories } } as unknown as Parameters<typeof methodsSentence>[0]);
  expect(told(category('Stress', 'same'))).toBe('The methods are those of the edition before.');
  expect(told(category('Knot', 'notComparable'), category('Stress', 'changed'), category('Honesty', 'notComparable'))).toBe(
    'Knot and Honesty: another method, values may not be compared. Stress: another method, compare values with care.',
  );
});
