import { describe, expect, it } from 'vitest';
import type { Report } from '../../src/audit/model/report.ts';
import { summaryText } from '../../src/cli/audit/summary.ts';
import { styleFor } from '../../src/cli/style.ts';
import { reportOf } from '../sheets/handover/read.ts';
import type { Listed } from '../sheets/tables.ts';

const fine: Listed = {
  tag: 'V-1',
  machine: 'M',
  measured: 200,
  configured: 200,
  alert: 3,
  danger: 5,
  gap: -10,
};
const flat = (text: string) => text.replaceAll(/\s+/gu, ' ');
const told = (...listed: readonly Listed[]) => flat(summaryText(reportOf(listed)));
const all = (...listed: readonly Listed[]) => flat(summaryText(reportOf(listed), { details: true }));
const clean = 'Nothing needs action.';

describe('what needs action, at the terminal', () => {
  it('is nothing only where nothing was found', () => {
    expect(told(fine)).toContain(`${clean} Keep the record with the machine.`);
    const bypassed = told({ ...fine, bypass: true });
    expect(bypassed).not.toContain(clean);
    expect(bypassed).toContain(
      'critical V-1 is in bypass: it trips nothing. Before start-up: remove the bypass',
    );
    // 1000/192 = 5.208 mil: within 5 %, beyond 5.1 mil.
    for (const one of [{ measured: 192 }, { asLeft: 192 }]) {
      const beyond = told({ ...fine, ...one, limit: 5.1 });
      expect(beyond).not.toContain(clean);
      expect(beyond).toContain('critical V-1 danger acts at 5.21 mil, beyond the machine limit of 5.1 mil.');
    }
    const other = told({ ...fine, alert: 6 });
    expect(other).not.toContain(clean);
    expect(other).toContain('warning V-1: The alert of 6 mil is not below the danger of 5 mil');
  });

  // By hand: 5·200/160 = 6.25 mil; 5·160/200 = 4 mil on the panel.
  it('tells where a late danger really trips and the panel reading to treat as danger', () => {
    expect(told({ ...fine, measured: 160 })).toContain(
      'critical V-1 danger is late: set 5, really trips at 6.25 mil. Correct the chain and measure again. Until then treat 4 mil on the panel as danger.',
    );
  });

  it('begins with how many there are', () => {
    const lines = summaryText(reportOf([{ ...fine, measured: 160 }])).split('\n');
    expect(lines[2]).toBe('2 things need action, 1 of them critical.');
    expect(summaryText(reportOf([{ ...fine, bypass: true }])).split('\n')[2]).toBe(
      '1 critical thing needs action.',
    );
    expect(summaryText(reportOf([{ ...fine, alert: 6 }])).split('\n')[2]).toBe(
      '1 thing needs action, nothing critical.',
    );
  });

  it('shows ten, and counts the others', () => {
    const twelve = Array.from({ length: 12 }, (_, at) => ({ ...fine, tag: `B-${at + 1}`, bypass: true }));
    const text = told(...twelve);
    expect(text).toContain('B-10 is in bypass');
    expect(text).not.toContain('B-11 is in bypass');
    expect(text).toContain('and 2 more, 2 of them critical: --details lists them.');
    expect(all(...twelve)).toContain('B-12 is in bypass');
  });

  it('names rules with --details alone', () => {
    const late = { ...fine, measured: 160 };
    expect(told(late)).not.toContain('danger-late');
    expect(all(late)).toContain('critical danger-late, Monitor!E2: ');
    expect(all(late)).toContain(
      'danger: late, set 5 mil, really 6.25 mil, panel 4 mil, by the listed sensitivity',
    );
  });
});

describe('the counts at the terminal', () => {
  it('keep bypass and what is not known apart', () => {
    const text = told(
      fine,
      { ...fine, tag: 'V-2', measured: 160 },
      { ...fine, tag: 'V-3', bypass: true },
      { ...fine, tag: 'V-4', measured: null },
    );
    expect(text).toContain('4 channels: 1 late, 1 OK; 1 not known, 1 in bypass.');
  });

  it('tell in one line what was corrected', () => {
    const text = told(
      { ...fine, measured: 160, asLeft: 200 },
      { ...fine, tag: 'V-2', asLeft: 160 },
      { ...fine, tag: 'V-3' },
    );
    expect(text).toContain('2 channels were measured again after a correction: 1 corrected.');
    expect(text).toContain('3 channels: 1 late, 2 OK.');
    expect(told(fine)).not.toContain('measured again');
  });

  it('say of a list without channels that nothing was audited', () => {
    const report: Report = { ...reportOf([fine]) };
    const none = { ...report, channels: [], summary: { ...report.summary, channels: 0, within: 0 } };
    const text = summaryText(none);
    expect(text).toContain('The channel list names no channel, so nothing was audited.');
    expect(text).not.toContain(clean);
  });
});

describe('colours and signs', () => {
  const report = reportOf([{ ...fine, measured: 160 }]);
  const text = (stream: { isTTY?: boolean }, env: Record<string, string>) =>
    summaryText(report, { style: styleFor(stream, env) });
  const escapes = /\u001b\[/u; // eslint-disable-line no-control-regex
  const plainText = summaryText(report);

  it('stand on a terminal alone', () => {
    expect(text({ isTTY: true }, {})).toMatch(escapes);
    expect(text({ isTTY: true }, {})).toContain('■ critical');
    for (const env of [{}, { CI: 'true' }, { FORCE_COLOR: '1' }]) expect(text({}, env)).toBe(plainText);
    expect(text({ isTTY: true }, { TERM: 'dumb' })).toBe(plainText);
    expect(plainText).not.toMatch(escapes);
  });

  it('are without colour where NO_COLOR is set to something', () => {
    const bare = text({ isTTY: true }, { NO_COLOR: '1' });
    expect(bare).not.toMatch(escapes);
    expect(bare).toContain('■ critical');
    expect(text({ isTTY: true }, { NO_COLOR: '' })).toMatch(escapes);
  });

  it('change no word', () => {
    const stripped = text({ isTTY: true }, {}).replaceAll(/\u001b\[\d+m/gu, ''); // eslint-disable-line no-control-regex
    expect(flat(stripped).replaceAll(/[■▲] /gu, '')).toBe(flat(plainText));
  });
});
