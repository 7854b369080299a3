import { describe, expect, it } from 'vitest';
import { messageOf, reportedRule, readingMessages } from '../../src/audit/advise/messages/messages.ts';
import type { Fact, Finding } from '../../src/audit/model/findings.ts';
import type { Report } from '../../src/audit/model/report.ts';
import { auditedOn } from '../demo/files.ts';
import { auditCase } from './golden.ts';
import { goldenCases } from './goldenCases.ts';

/** Every finding of a report, those of groups and those of no channel too. */
function findingsOf({ channels, groups, problems }: Report): readonly Finding[] {
  return [...channels, ...groups].flatMap(({ findings }) => findings).concat(problems);
}

/** The fact behind a finding by nothing but what a stored report has of it; the place and how grave it is are left out. */
function stored({ rule, threshold, multiplier, values }: Finding): Fact {
  const prefix = threshold === null ? '' : `${threshold.replace(' ', '-')}-`;
  expect(rule.startsWith(prefix)).toBe(true);
  const fact = { rule: rule.slice(prefix.length), threshold, multiplier, values };
  return JSON.parse(JSON.stringify(fact)) as Fact;
}

const told = [...(await goldenCases())]
  .filter(([, { refused }]) => !refused)
  .flatMap(([, golden]) => findingsOf(auditCase(golden)))
  .concat(findingsOf(auditedOn('2026-01-01')));

describe('the sentence of a finding', () => {
  it('is there, with the values that it is made from, for every rule', () => {
    expect(told.filter(({ values }) => typeof values !== 'object')).toEqual([]);
    expect(told.filter(({ message }) => message.trim() === '')).toEqual([]);
  });

  it('is the same again from its values as a stored report has them', () => {
    expect(told.length).toBeGreaterThan(100);
    for (const finding of told) {
      const fact = stored(finding);
      expect(messageOf(fact)).toBe(finding.message);
      expect(reportedRule(fact)).toBe(finding.rule);
    }
  });

  it('changes with its values', () => {
    const [missing] = told.filter(({ rule }) => rule === 'value-missing');
    const other = { ...stored(missing!), values: { what: 'alert setpoint of another' } } as Fact;
    expect(messageOf(other)).toBe('The alert setpoint of another is missing; enter it.');
  });

  it('says of a vote that lacks members why it cannot trip, though none of those listed is idle', () => {
    const values = { group: 'G', voting: '2oo3', threshold: 'danger', multiplier: 1, idle: [] };
    const fact = { rule: 'group-cannot-trip', threshold: null, multiplier: null, values } as unknown as Fact;
    expect(messageOf(fact)).toBe(
      "Group 'G' (2oo3) cannot trip on danger: fewer of its members are listed than have to vote.",
    );
  });

  it('is met in these workbooks for every rule of reading', () => {
    const met = new Set(told.map(({ rule }) => rule));
    expect(Object.keys(readingMessages).filter((rule) => !met.has(rule))).toEqual([]);
  });
});
