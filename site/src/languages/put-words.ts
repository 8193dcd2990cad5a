import { messagesIn, type Message } from './messages.js';

/** Message in English → the same in the words of a language or of a house. */
export type Words = Readonly<Record<string, string>>;

/** A source file with other words for its messages; those without stay English. */
export function putWords(path: string, source: string, words: Words): string {
  const messages = messagesIn(path, source).toSorted((one, other) => one.start - other.start || other.end - one.end);
  const slice = (start: number, end: number, within?: Message): string => {
    let text = '';
    let at = start;
    for (const message of messages) {
      if (message === within || message.start < at || message.end > end) continue;
      text += source.slice(at, message.start);
      text += message.put(words[message.words] ?? message.words, (from, to) => slice(from, to, message));
      at = message.end;
    }
    return text + source.slice(at, end);
  };
  return slice(0, source.length);
}
