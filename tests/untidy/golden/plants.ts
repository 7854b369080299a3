import type { Cell } from '../../../src/cells/cell.ts';
import type { ChannelTruth } from '../truth.ts';
import {
  at,
  channel,
  type Guard,
  mustBeAsked,
  mustBeRead,
  readOrAsked,
  sheet,
  type SheetExtras,
  truth,
  workbook,
} from './guard.ts';

/** Rows of cells between bars; a text in quotes that is a number stays a text. */
function rows(text: string): Cell[][] {
  return text
    .trim()
    .split('\n')
    .map((line) => line.split('|').map((cell) => cellOf(cell.trim())));
}

function cellOf(text: string): Cell {
  if (text === '') return null;
  if (text.startsWith("'")) return text.slice(1);
  return /^-?\d+(?:\.\d+)?$/u.test(text) ? Number(text) : text;
}

function list(text: string, extras: SheetExtras = {}, name = 'List') {
  return sheet(name, rows(text), extras);
}

type Numbers = readonly [configured: number, measured: number, alert: number, danger: number];

const micrometres = ([configured, measured, alert, danger]: Numbers): Numbers => [
  configured * 25.4,
  measured * 25.4,
  alert / 25.4,
  danger / 25.4,
];

/** A channel of the only list, in mV/mil and mil, or in mV/µm and µm. */
function one(
  tag: string,
  row: number,
  numbers: Numbers,
  more: Partial<ChannelTruth> = {},
  header = 1,
): ChannelTruth {
  return channel(tag, numbers, at(['List', row, header]), { tag: tag.split(' ') as [string], ...more });
}

const form = (tag: string, measured: string) => `
Messkettenprüfblatt
Messstelle: | ${tag} | Einbauort: | Lager 1
Kennwert Soll | 7,87 mV/µm | Kennwert Ist | ${measured} mV/µm
Spaltspannung | -9.8 | V |
Voralarm | 80 | µm SS |
Abschaltung | 120 | µm SS |
Geprüft: | M. Adler | Datum: | 12.03.2025
`;

/** Lists as plants write them, each with an oddity of its own; what they say is invented. */
export const plantGuards: readonly Guard[] = [
  {
    name: 'forms with two labels a line and units behind their numbers',
    because: 'Each form is a channel; who tested it is none.',
    workbook: workbook(list(form('11CY001', '6,61') + form('11CY002', '7,79'))),
    truth: truth(
      [
        one('11CY001', 2, micrometres([7.87, 6.61, 80, 120]), {}, 2),
        one('11CY002', 10, micrometres([7.87, 7.79, 80, 120]), {}, 10),
      ],
      [],
    ),
    holds: mustBeRead,
  },
  {
    name: 'bearing and direction in two columns',
    because: 'Only both together name a probe.',
    workbook: workbook(
      list(`
Brg | Dir | Calibration constant programmed (mV/mil) | Actual (mV/mil) | Gap (V) | Alarm (mil) | Trip (mil)
'1 | X | 200 | 171 | -9.8 | 3 | 5
'1 | Y | 200 | 202 | -9.9 | 3 | 5
'2 | X | 200 | 198 | -10.3 | 3.2 | 5.2
'2 | Y | 200 | 228 | -10.4 | 3.2 | 5.2`),
    ),
    truth: truth(
      [
        one('1 X', 2, [200, 171, 3, 5]),
        one('1 Y', 3, [200, 202, 3, 5]),
        one('2 X', 4, [200, 198, 3.2, 5.2]),
        one('2 Y', 5, [200, 228, 3.2, 5.2]),
      ],
      [],
    ),
    holds: mustBeRead,
  },
  {
    name: 'a table on its side with rows whose labels are no known words',
    because: 'SP 1 and SP 2 stand among the labels: numbered only, so a person says which trips.',
    workbook: workbook(
      list(`
Set SF, tested SF: mV/mil; SP 1, SP 2: mil pp
Loop tag | VX-1 | VY-1 | VX-2
Set SF | 200 | 200 | 200
SP 1 | 3 | 3 | 3
SP 2 | 5 | 5 | 5
Tested SF | 170 | 203 | 199`),
    ),
    truth: truth(
      ['VX-1', 'VY-1', 'VX-2'].map((tag, at) =>
        channel(tag, [200, [170, 203, 199][at]!, 3, 5], [{ sheet: 'List', column: 'BCD'[at]! }], {
          mustAsk: true,
        }),
      ),
      [],
    ),
    holds: ['asked'],
  },
  {
    name: 'per cent of a range in short, signatures of a French list',
    because: '% EM is per cent of the étendue de mesure, which has a unit.',
    workbook: workbook(
      list(`
Repère | Sensibilité réglée (mV/µm) | Sensibilité mesurée (mV/µm) | Étendue de mesure (µm c.c.) | Alarme (% EM) | Déclenchement (% EM)
VT-1 | 7.87 | 6.9 | 250 | 30 | 48
VT-2 | 7.87 | 7.9 | 250 | 32 | 50

Vérifié par : L. Brun | | Signature :`),
    ),
    truth: truth(
      [one('VT-1', 2, micrometres([7.87, 6.9, 75, 120])), one('VT-2', 3, micrometres([7.87, 7.9, 80, 125]))],
      [],
    ),
    holds: mustBeRead,
  },
  {
    name: 'a footnote that says zero to peak',
    because:
      'The header says mil alone; below the list stands that the setpoints are zero to peak: twice as much.',
    workbook: workbook(
      list(`
Tag | SF set (mV/mil) | SF tested (mV/mil) | Alarm (mil) | Trip (mil)
V-1 | 200 | 170 | 1.5 | 2.5
V-2 | 200 | 202 | 1.5 | 2.5

* Alarm and trip are mil zero to peak.`),
    ),
    truth: truth(
      [
        one('V-1', 2, [200, 170, 3, 5], { mustAsk: true }),
        one('V-2', 3, [200, 202, 3, 5], { mustAsk: true }),
      ],
      [],
    ),
    holds: ['asked'],
  },
  {
    name: 'a title above standard headers that says zero to peak',
    because: 'The same for the standard headers, whose unit says nothing of how it is counted.',
    workbook: workbook(
      list(`
Setpoints 0-pk, spring survey

Tag | Configured sensitivity (mV/mil) | Measured sensitivity (mV/mil) | Alert (mil) | Danger (mil)
V-1 | 200 | 170 | 1.5 | 2.5
V-2 | 200 | 202 | 1.5 | 2.5`),
    ),
    truth: truth(
      [
        one('V-1', 4, [200, 170, 3, 5], { mustAsk: true }, 3),
        one('V-2', 5, [200, 202, 3, 5], { mustAsk: true }, 3),
      ],
      [],
    ),
    holds: ['asked'],
  },
  {
    name: 'numbers that fit another unit than their header',
    because: '6.7 can be no mV/mil: a person says whether the header or the numbers are wrong.',
    workbook: workbook(
      list(`
Tag | SF set (mV/mil) | SF tested (mV/mil) | Alarm (mil pp) | Trip (mil pp)
V-1 | 200 | 6.7 | 3 | 5
V-2 | 200 | 7.9 | 3 | 5`),
    ),
    truth: truth(
      [
        one('V-1', 2, [200, 6.7 * 25.4, 3, 5], { mustAsk: true }),
        one('V-2', 3, [200, 7.9 * 25.4, 3, 5], { mustAsk: true }),
      ],
      [],
    ),
    holds: ['asked'],
  },
  {
    name: 'a share of the nominal sensitivity',
    because: 'Per cent of the nominal value is no sensitivity, though 85 could be one of 100 mV/mil.',
    workbook: workbook(
      list(`
Tag | SF set (mV/mil) | SF measured (% of nominal) | Alarm (mil pp) | Trip (mil pp)
V-1 | 100 | 85 | 3 | 5
V-2 | 100 | 101 | 3 | 5`),
    ),
    truth: truth(
      [
        channel('V-1', [100, null, 3, 5], at(['List', 2])),
        channel('V-2', [100, null, 3, 5], at(['List', 3])),
      ],
      [],
    ),
    holds: ['read right', ...mustBeAsked],
  },
  {
    name: 'three grades of alarms',
    because: 'Which of three trips is not said: the first and the last are proposed.',
    workbook: workbook(
      list(`
Tag | SF set (mV/mil) | SF tested (mV/mil) | Alarm 1 (mil pp) | Alarm 2 (mil pp) | Alarm 3 (mil pp)
V-1 | 200 | 170 | 2 | 3 | 5
V-2 | 200 | 203 | 2 | 3 | 5`),
    ),
    truth: truth(
      [
        one('V-1', 2, [200, 170, 2, 5], { mustAsk: true }),
        one('V-2', 3, [200, 203, 2, 5], { mustAsk: true }),
      ],
      [],
    ),
    holds: ['asked'],
  },
  {
    name: 'setpoints in force beside proposed ones',
    because: 'Groups say which are current; the proposed ones stand under the same headers.',
    workbook: workbook(
      list(
        `
Tag | SF rack (mV/mil) | SF verified (mV/mil) | Current | | Proposed |
 | | | Alert mil | Danger mil | Alert mil | Danger mil
V-1 | 200 | 172 | 3 | 5 | 2.6 | 4.2
V-2 | 200 | 203 | 3 | 5 | 2.6 | 4.2`,
        {
          merged: [
            [1, 4, 1, 5],
            [1, 6, 1, 7],
          ],
        },
      ),
    ),
    truth: truth([one('V-1', 3, [200, 172, 3, 5]), one('V-2', 4, [200, 203, 3, 5])], []),
    holds: readOrAsked,
  },
  {
    name: 'rounds of tests on dated sheets',
    because: 'Names with a year are rounds, no machines: the later one is proposed.',
    workbook: workbook(
      list('Tag | Sensitivity found mV/mil | Gap V\nV-1 | 199 | -9.8\nV-2 | 203 | -9.9', {}, 'Oct 2021'),
      list('Tag | Sensitivity found mV/mil | Gap V\nV-1 | 170 | -9.8\nV-2 | 202 | -9.9', {}, 'Oct 2024'),
      list(
        'Tag | Sensitivity set mV/mil | Alarm mil pp | Trip mil pp\nV-1 | 200 | 3 | 5\nV-2 | 200 | 3 | 5',
        {},
        'Panel',
      ),
    ),
    truth: truth(
      [
        one('V-1', 2, [200, 170, 3, 5], { mustAsk: true, places: at(['Oct 2024', 2], ['Panel', 2]) }),
        one('V-2', 3, [200, 202, 3, 5], { mustAsk: true, places: at(['Oct 2024', 3], ['Panel', 3]) }),
      ],
      [],
    ),
    holds: ['asked'],
  },
  {
    name: 'a tag in the first of two lines of probes alone',
    because: 'The line below is the Y probe of the same instrument.',
    workbook: workbook(
      list(`
Instrument | Axis | Configured mV/mil | Measured mV/mil | Alarm mil pp | Trip mil pp
VE-101 | X | 200 | 170 | 3 | 5
 | Y | 200 | 202 | 3 | 5
VE-102 | X | 200 | 199 | 3 | 5
 | Y | 200 | 228 | 3 | 5`),
    ),
    truth: truth(
      [
        one('VE-101 X', 2, [200, 170, 3, 5]),
        one('VE-101 Y', 3, [200, 202, 3, 5]),
        one('VE-102 X', 4, [200, 199, 3, 5]),
        one('VE-102 Y', 5, [200, 228, 3, 5]),
      ],
      [],
    ),
    holds: mustBeRead,
  },
  {
    name: 'columns numbered below standard headers, signatures at the end',
    because: 'Neither the numbers of the columns nor who checked the list is a channel.',
    workbook: workbook(
      list(`
Tag | Machine | Configured sensitivity (mV/mil) | Measured sensitivity (mV/mil) | Alert (mil) | Danger (mil)
1 | 2 | 3 | 4 | 5 | 6
V-1 | Fan | 200 | 170 | 3 | 5
V-2 | Fan | 200 | 203 | 3 | 5

Checked by: | A. Moss | | Date: | '2025-03-01`),
    ),
    truth: truth(
      [
        one('V-1', 3, [200, 170, 3, 5], { machine: 'Fan' }),
        one('V-2', 4, [200, 203, 3, 5], { machine: 'Fan' }),
      ],
      [],
    ),
    holds: mustBeRead,
  },
  {
    name: 'setpoints in per cent of full scale beside others in a unit',
    because: 'The column of units says it line by line; the full scale has a unit.',
    workbook: workbook(
      list(`
Tag | Configured sensitivity (mV/µm) | Measured sensitivity (mV/µm) | Alert | Danger | Setpoint unit | Full scale | Full scale unit
V-1 | 7.87 | 6.5 | 40 | 60 | % FS | 150 | µm pp
V-2 | 7.87 | 7.9 | 60 | 90 | µm pp | 150 | µm pp`),
    ),
    truth: truth(
      [one('V-1', 2, micrometres([7.87, 6.5, 60, 90])), one('V-2', 3, micrometres([7.87, 7.9, 60, 90]))],
      [],
    ),
    holds: mustBeRead,
  },
];
