import { describe, expect, it } from 'vitest';
import { formatDate, formatShortDate } from '../../../src/compute/format/format-date.ts';

describe('formatDate', () => {
  it('writes the day in words', () => {
    expect(formatDate('2025-10-20').replaceAll('\u00A0', ' ')).toBe('20 October 2025');
    expect(formatShortDate('2025-05-01').replaceAll('\u00A0', ' ')).toBe('1 May');
  });

  it('is not moved by a time zone', () => {
    const before = process.env['TZ'];
    try {
      for (const zone of ['Pacific/Kiritimati', 'Pacific/Pago_Pago']) {
        process.env['TZ'] = zone;
        expect(formatDate('2025-01-01').replaceAll('\u00A0', ' ')).toBe('1 January 2025');
      }
    } finally {
      if (before === undefined) delete process.env['TZ'];
      else process.env['TZ'] = before;
    }
  });

  it('refuses a date of another form', () => {
    expect(() => formatDate('20.10.2025')).toThrow('"20.10.2025"');
    expect(() => formatDate('2025-13-01')).toThrow('2025-13-01');
  });
});
