import { describe, expect, it } from 'vitest';
import { untidy, type Untidy } from './generate.ts';
import { judge } from './judge/judge.ts';
import type { Outcome } from './judge/outcome.ts';
import { perfect, type WrittenReport } from './judge/perfect.ts';
import { ownWorkbooks } from './ownWorkbooks.ts';
import type { BookTruth } from './truth.ts';

const books: readonly { readonly name: string; readonly truth: BookTruth }[] = [
  ...Array.from({ length: 120 }, (_, index) => untidy(index + 1)).map(({ number, truth }) => ({
    name: `workbook ${number}`,
    truth,
  })),
  ...ownWorkbooks().map(({ file, truth }) => ({ name: file, truth })),
];

const readable = books.filter(({ truth }) => truth.channels.every(({ mustAsk }) => !mustAsk));
const onlyAsked = books.filter(({ truth }) => truth.channels.some(({ mustAsk }) => mustAsk));

function reported(report: unknown): Outcome {
  return { report, refusal: null, proposed: [], choice: [], accepted: null };
}

/** A workbook in which some radial channel was judged, and a report of it that is right but for what `spoil` does. */
function spoilt(truth: BookTruth, spoil: (report: WrittenReport) => void): Outcome {
  const report = perfect(truth);
  spoil(report);
  return reported(report);
}

describe('judge of untidy workbooks', () => {
  it('calls a report right that says all of the truth', () => {
    expect(readable.length).toBeGreaterThan(80);
    for (const { name, truth } of readable) {
      expect({ name, ...judge(truth, reported(perfect(truth))) }).toEqual({
        name,
        grade: 'read right',
        reasons: [],
        unsaid: [],
        misleads: false,
      });
    }
  });

  it('calls it silently wrong to judge unasked what only a person can say', () => {
    expect(onlyAsked.length).toBeGreaterThan(5);
    for (const { name, truth } of onlyAsked) {
      expect([name, judge(truth, reported(perfect(truth))).grade]).toEqual([name, 'silently wrong']);
    }
  });

  it('calls a question usable whose proposal reads right when it is given back unchanged', () => {
    for (const { name, truth } of books) {
      const outcome: Outcome = {
        report: null,
        refusal: 'Which?',
        proposed: [],
        choice: [],
        accepted: () => reported(perfect(truth)),
      };
      expect([name, judge(truth, outcome).grade]).toEqual([name, 'asked']);
    }
  });

  it('calls a refusal without a proposal a refusal, and names a proposal that misleads', () => {
    for (const { truth } of readable.slice(0, 20)) {
      const refusal: Outcome = {
        report: null,
        refusal: 'No list.',
        proposed: [],
        choice: [],
        accepted: null,
      };
      expect(judge(truth, refusal).grade).toBe('refused');
      const exchanged = spoilt(truth, exchange);
      expect(judge(truth, { ...refusal, accepted: () => exchanged })).toMatchObject({
        grade: 'refused',
        misleads: true,
      });
    }
  });

  it('takes a proposal in words that names the right place of each needed meaning', () => {
    const { truth } = untidy(3, { language: 'de', 'setpoint words': 'own words' });
    const proposed = truth.fields.map(({ meaning, sheet, column, row }) => ({
      meaning,
      sheet,
      ...(column === undefined ? {} : { column }),
      ...(row === undefined ? {} : { row }),
    }));
    const outcome: Outcome = {
      report: null,
      refusal: 'Confirm these.',
      proposed,
      choice: [],
      accepted: null,
    };
    expect(judge(truth, outcome).grade).toBe('asked');
    const without = proposed.filter(({ meaning }) => meaning !== 'danger');
    expect(judge(truth, { ...outcome, proposed: without }).grade).toBe('refused');
  });

  it.each<[string, (report: WrittenReport, book: BookTruth) => void]>([
    ['configured and measured exchanged', exchange],
    [
      'a unit taken for another',
      ({ channels }) => {
        channels[0]!.unit = 'µm';
      },
    ],
    [
      'setpoints from zero to peak',
      ({ channels }) => {
        channels[0]!.detection = '0-p';
      },
    ],
    [
      'a channel dropped unsaid',
      (report) => {
        report.channels.shift();
      },
    ],
    [
      'a mean as a channel',
      ({ channels }) => {
        channels.push({ ...channels[0]!, tag: 'Average' });
      },
    ],
    [
      'a heading as a channel that is not known',
      ({ channels }) => {
        channels.push({ ...channels[0]!, tag: 'Pump house', asFound: null, thresholds: [] });
      },
    ],
    [
      'another machine',
      ({ channels }) => {
        channels[0]!.machine = 'Somewhere else';
      },
    ],
    [
      'an axial channel as a radial one, or the other way round',
      ({ channels }) => {
        channels[0]!.kind = channels[0]!.kind === 'axial' ? 'radial' : 'axial';
      },
    ],
    [
      'a measurement invented as left',
      ({ channels }, { channels: [first] }) => {
        const [channel] = channels;
        if (first!.asLeft === null)
          channel!.asFound = { sensitivity: channel!.sensitivity, thresholds: channel!.thresholds };
        else channel!.asFound = null;
      },
    ],
    [
      'a full scale taken from another column',
      ({ channels }, { channels: [first] }) => {
        if (first!.optional.fullScale === undefined) channels.shift();
        else channels[0]!.inputs['fullScale'] = 1.234;
      },
    ],
    [
      'a verdict that does not follow',
      ({ channels }) => {
        const state = channels[0]!.asFound ?? channels[0]!;
        for (const threshold of state.thresholds)
          threshold.verdict = threshold.verdict === 'late' ? 'within' : 'late';
      },
    ],
    [
      'a level at which it acts that does not follow',
      ({ channels }) => {
        const state = channels[0]!.asFound ?? channels[0]!;
        for (const threshold of state.thresholds) threshold.effective = (threshold.effective ?? 0) * 1.3;
      },
    ],
  ])('calls %s silently wrong', (_, spoil) => {
    const plain = readable.filter(({ truth }) => {
      const [first] = truth.channels;
      return (
        first!.kind === 'radial' &&
        first!.verdict !== 'incomplete' &&
        truth.channels.every(({ verdict }) => verdict !== 'incomplete')
      );
    });
    expect(plain.length).toBeGreaterThan(30);
    for (const { name, truth } of plain) {
      const outcome = spoilt(truth, (report) => {
        spoil(report, truth);
      });
      expect([name, judge(truth, outcome).grade]).toEqual([name, 'silently wrong']);
    }
  });

  it('calls a late danger that stands in no critical action silently wrong', () => {
    const late = readable.filter(({ truth }) =>
      truth.channels.some(({ verdict, asLeft }) => verdict === 'late' && asLeft === null),
    );
    expect(late.length).toBeGreaterThan(20);
    for (const { truth } of late) {
      expect(
        judge(
          truth,
          spoilt(truth, (report) => {
            report.attention = [];
          }),
        ).grade,
      ).toBe('silently wrong');
    }
  });

  it('calls a channel partly read where the report says that it was left out', () => {
    for (const { name, truth } of readable.filter(
      ({ truth: { channels } }) => channels.filter(({ verdict }) => verdict !== 'incomplete').length > 2,
    )) {
      const [first] = truth.channels;
      const [place] = first!.places;
      const outcome = spoilt(truth, (report) => {
        report.channels.shift();
        report.notRead.push({
          what: 'row',
          sheet: place!.sheet,
          row: place!.row ?? 1,
          column: place!.column ?? 'A',
          text: first!.tag.join(' '),
        });
      });
      expect([name, judge(truth, outcome).grade]).toEqual([name, 'partly read']);
    }
  });

  it('names the meanings whose place the report does not say', () => {
    const foreign: Untidy = untidy(3, { language: 'fr', 'setpoint words': 'own words' });
    const outcome = spoilt(foreign.truth, (report) => {
      report.columns = [];
    });
    expect(judge(foreign.truth, outcome).unsaid.join()).toContain('measured sensitivity');
  });
});

function exchange({ channels }: WrittenReport): void {
  for (const channel of channels) {
    for (const state of [channel, channel.asFound]) {
      if (!state) continue;
      const { configured, measured, unit } = state.sensitivity;
      state.sensitivity = { configured: measured, measured: configured, unit };
    }
  }
}
