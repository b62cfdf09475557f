import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { escapeBytes, unescapeBytes, visible } from '../../src/model/visible.ts';

describe('text a person is shown', () => {
  it('has its control characters written out', () => {
    expect(visible('a\x1b[31mb\r\n\x00\x9b')).toBe('a\\x1b[31mb\\x0d\\x0a\\x00\\x9b');
  });

  it('cannot turn the writing direction or break the line', () => {
    expect(visible('a\u202eb\u2066c\u2028')).toBe('a\\u202eb\\u2066c\\u2028');
  });

  it('keeps letters of every script', () => {
    const text = 'Türschalter, 左 \u{1f6aa} C:\\x';
    expect(visible(text)).toBe(text);
    expect(visible('\ud83d')).toBe('\\ud83d');
  });

  it('never holds a control character, whatever it is made from', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary' }), (text) => {
        for (const character of visible(text)) {
          const code = character.codePointAt(0) ?? 0;
          expect(code < 0x20 || (code >= 0x7f && code < 0xa0)).toBe(false);
        }
      }),
    );
  });
});

describe('bytes written out', () => {
  it('come back exactly', () => {
    fc.assert(
      fc.property(fc.uint8Array(), (bytes) => {
        const text = Buffer.from(bytes).toString('latin1');
        expect(escapeBytes(text)).toMatch(/^[\x20-\x7e]*$/);
        expect(unescapeBytes(escapeBytes(text))).toBe(text);
      }),
    );
  });
});
