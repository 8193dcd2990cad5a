import { findChromium } from '../support/browser.js';

test('a CHROMIUM_PATH that leads nowhere is named, not replaced by another browser', () => {
  const before = process.env['CHROMIUM_PATH'];
  process.env['CHROMIUM_PATH'] = '/no/such/browser';
  try {
    expect(() => findChromium()).toThrow('CHROMIUM_PATH names /no/such/browser, which does not exist');
  } finally {
    if (before === undefined) delete process.env['CHROMIUM_PATH'];
    else process.env['CHROMIUM_PATH'] = before;
  }
});
