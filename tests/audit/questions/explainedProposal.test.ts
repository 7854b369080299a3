import { expect, test } from 'vitest';
import { explainedProposal } from '../../../src/audit/advise/questions/explainedProposal.ts';
import type { Option, Question } from '../../../src/audit/read/understand/questions/question.ts';

const table = { sheet: 'Panel', header: 4 };

function asked(own: Pick<Question, 'subject' | 'options'> & Partial<Question>): Question {
  return { id: 'q', needed: true, records: 2, evidence: [], sheets: ['Panel'], ...own };
}

function option(answer: Option['answer'], text = ''): Option {
  return { field: null, text, answer };
}

test('why it is proposed stands at the column, at the list, or, of a cell, at the end', () => {
  const danger = asked({
    subject: { is: 'field', meaning: 'danger' },
    evidence: [{ is: 'sheet name', sheet: 'Panel' }],
    options: [option({ tables: [{ ...table, columns: { danger: { at: 'G', header: 'HH' } } }] })],
  });
  const machine = asked({
    subject: { is: 'machine', sheet: 'Panel' },
    evidence: [{ is: 'sheet name', sheet: 'Panel' }],
    options: [option({ tables: [{ ...table, machine: 'Fan' }] }, 'Fan'), option({}, '')],
  });
  const names = asked({
    subject: { is: 'names', pairs: [['K1', 'K-1']], places: [] },
    options: [option({ names: { K1: 'K-1' } })],
  });
  const map = {
    tables: [
      { ...table, machine: 'Fan', columns: { danger: { at: 'G', header: 'HH' }, tag: { at: 'A' } } },
      { sheet: 'Other', header: 4 },
    ],
    names: { K1: 'K-1' },
  };
  const accepted = [danger, machine, names].map((question) => [question, question.options[0]] as const);
  const answers = accepted.flatMap(([question, first]) => (first ? [[question, first] as const] : []));
  expect(explainedProposal(map, answers)).toEqual({
    tables: [
      {
        ...map.tables[0],
        columns: {
          danger: { at: 'G', header: 'HH', evidence: ["The sheet is called 'Panel'"] },
          tag: { at: 'A' },
        },
        evidence: ["Machine of sheet 'Panel': The sheet is called 'Panel'"],
      },
      map.tables[1],
    ],
    names: map.names,
    evidence: ["Tags spelled in two ways: 'K1' and 'K-1'"],
  });
});

test('another answer than the proposed one is a person’s', () => {
  const question = asked({
    subject: { is: 'machine', sheet: 'Panel' },
    evidence: [{ is: 'sheet name', sheet: 'Panel' }],
    options: [
      option({ tables: [{ ...table, machine: 'Fan' }] }, 'Fan'),
      option({ tables: [{ ...table, machine: 'Pump' }] }, 'Pump'),
    ],
  });
  const [, other] = question.options;
  const answers = other ? [[question, other] as const] : [];
  expect(
    explainedProposal({ tables: [{ ...table, machine: 'Pump' }] }, answers).tables?.[0]?.evidence,
  ).toEqual(["Machine of sheet 'Panel': You said so"]);
});
