import { z } from 'zod';

/** What is not seen, or turns the direction of what is: it makes two names look like one (RFC 8266 refuses it in nicknames as well). */
const INVISIBLE = /[\p{Cc}\p{Cf}\p{Co}\p{Cn}\p{Zl}\p{Zp}\u034f\u115f\u1160\u17b4\u17b5\u3164\uffa0\u2800]/u;
/** Scripts whose letters look alike; a name is written in one of them. */
const LOOKALIKES = [/\p{Script=Latin}/u, /\p{Script=Greek}/u, /\p{Script=Cyrillic}/u, /\p{Script=Armenian}/u, /\p{Script=Cherokee}/u];

/** One way to write what looks the same (Unicode NFC), with single spaces. */
export const asDisplayName = (typed: string): string =>
  typed
    .normalize('NFC')
    .replaceAll(/\p{Zs}+/gu, ' ')
    .trim();

/** Why a name cannot stand beside the names of others, in words; null when it can. */
export function displayNameFault(name: string): string | null {
  const unseen = INVISIBLE.exec(name)?.[0];
  if (unseen !== undefined) {
    const code = (unseen.codePointAt(0) ?? 0).toString(16).toUpperCase().padStart(4, '0');
    return `Found the invisible character U+${code}; expected letters, digits and signs that are seen. Type the name again.`;
  }
  if (LOOKALIKES.filter((script) => script.test(name)).length > 1)
    return 'Found letters of two scripts that look alike, e.g. Latin and Cyrillic; expected one of them. Type the name again in one.';
  return null;
}

/** A name that readers see beside others, of at most so many characters. */
export const shownName = (most: number) =>
  z
    .string()
    .overwrite(asDisplayName)
    .min(1)
    .max(most)
    .superRefine((name, context) => {
      const message = displayNameFault(name);
      if (message !== null) context.addIssue({ code: 'custom', message });
    });
