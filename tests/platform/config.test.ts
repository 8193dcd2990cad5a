import { readConfig } from '../../api/config.js';

const read = (env: Record<string, string>) => readConfig({ DATABASE_URL: 'postgresql://127.0.0.1/', ...env });

test.each(['errors@trials.example', 'https://trials.example/errors', ''])('readers may write to "%s"', (contact) => {
  expect(read({ HOUSE_CONTACT: contact }).HOUSE_CONTACT).toBe(contact);
});

test.each(['the harbour master', 'javascript:alert(1)', 'javascript://trials.example/%0aalert(1)'])('and not to "%s"', (contact) => {
  expect(() => read({ HOUSE_CONTACT: contact })).toThrow(/HOUSE_CONTACT: expected an address .* See the table in README/);
});

test('every variable that is wrong is told at once', () => {
  expect(() => read({ PORT: 'x', SECURE_COOKIES: 'perhaps' })).toThrow(/PORT: .*SECURE_COOKIES: /);
});

test('the languages of the site stand in order, each once', () => {
  expect(read({}).SITE_LANGUAGES).toEqual(['en']);
  expect(read({ SITE_LANGUAGES: 'en, de' }).SITE_LANGUAGES).toEqual(['en', 'de']);
  expect(() => read({ SITE_LANGUAGES: 'en,en' })).toThrow(/SITE_LANGUAGES: expected each language once/);
  expect(() => read({ SITE_LANGUAGES: 'fr' })).toThrow(/SITE_LANGUAGES/);
});
