import { readTyped } from './typed-reading.js';

/**
 * Forces of a form as they are sent: comma or point, with the gauge's unit or without; what is none goes as it was typed, and is refused.
 * @param fields by their numbers
 * @param unit that the form says the gauge displays in
 */
export const readingsFrom = (fields: unknown, unit: string): { readonly text: string; readonly unit: string }[] =>
  Object.values(fields as Record<string, { readonly text: string }>).map(({ text }) => {
    const read = readTyped(text, 'breakingForce', unit);
    if (read.is === 'number') return { text: read.value, unit };
    // The gauge said which force; a mass is no force, and nothing is guessed.
    return read.is === 'question' && text.trim().endsWith(read.unit) ? { text: read.value, unit: read.unit } : { text: text.trim(), unit };
  });
