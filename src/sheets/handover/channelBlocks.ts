import type { Policy } from '../../audit/model/policy.ts';
import type { ChannelInputs, ChannelResult, Exposure } from '../../audit/model/report.ts';
import { thresholdName, type SensitivityResult } from '../../audit/model/threshold.ts';
import { amount, capital, listed, percent } from '../../audit/model/wording.ts';
import { wide } from '../style/layout.ts';
import type { Machine } from '../machines.ts';
import { heading, space, text, type Block } from './annexPages.ts';
import { entriesOf, isFault } from './channelRows.ts';
import { numberLines, type Place } from './numberLines.ts';
import { type PageLine, clipped } from './paper.ts';
import { verdictSigns } from './signs.ts';

/** Channels that get a block of numbers; the audit's own sheets have all. */
const mostBlocks = 60;

/** Channels of which the annex tells more: those that need action, those that were measured again, and those exposed. */
export function channelsInDetail(machine: Machine): readonly ChannelResult[] {
  return machine.channels
    .filter((channel) => channel.asFound !== null || entriesOf(machine, channel).length > 0)
    .slice(0, mostBlocks);
}

/** The channels that need action or were measured again, worst first, each with what its numbers follow from and all of them. */
export function channelBlocks(machine: Machine, policy: Policy, place: Place): Block[] {
  const told = channelsInDetail(machine);
  const blocks = told.map((channel, index): Block => {
    const title =
      index === 0
        ? heading('Channels to look at, worst first; as they were found beside as they stand now')
        : [];
    return [...title, ...channelBlock(machine, channel, policy, place), space];
  });
  const rest = machine.channels.filter((channel) => !told.includes(channel));
  const [fine, beyond] = [true, false].map((ok) =>
    rest
      .filter((channel) => (entriesOf(machine, channel).length === 0) === ok)
      .map(({ tag }) => clipped(tag)),
  );
  return [
    ...blocks,
    ...namesBlock('Channels that are OK', fine ?? []),
    ...namesBlock('Channels to look at whose numbers stand on the audit’s own sheets', beyond ?? []),
  ];
}

function namesBlock(title: string, names: readonly string[]): Block[] {
  return names.length === 0 ? [] : [[...heading(title), ...text(`${names.join(', ')}.`)]];
}

function channelBlock(machine: Machine, channel: ChannelResult, policy: Policy, place: Place): Block {
  const remarks = [
    inputsSentence(channel),
    foundSentence(channel),
    recordSentence(channel),
    zoneSentence(channel),
    ...channel.exposure.map(exposureSentence),
    obstaclesSentence(channel),
  ];
  return [
    head(machine, channel),
    ...remarks.filter((words) => words !== '').flatMap((words) => text(words, 'remark')),
    ...numberLines(channel, policy, place),
  ];
}

function head(machine: Machine, channel: ChannelResult): PageLine {
  const { tag, location, kind, verdict, state, inBypass, asFound } = channel;
  const about = [location, kind ?? ''].filter((part) => part !== '').join(' · ');
  const fault = entriesOf(machine, channel).some(isFault);
  const word = inBypass === true ? 'in bypass' : verdict;
  const sign = `${verdictSigns[word]}${fault || word !== 'within' ? '' : ', check'}`;
  return {
    entries: [
      wide(clipped(tag), 'tag', 4),
      wide(clipped(about), 'place', 5),
      wide(asFound ? `${sign}, ${state}` : sign, inBypass === true ? 'unreachable' : verdict, 3),
    ],
  };
}

/** The sensitivities, zeros and the present reading that the numbers follow from. */
function inputsSentence({ sensitivity, inputs, unit, kind, state, asFound }: ChannelResult): string {
  const { reading, realReading, zeroConfigured, zeroMeasured, gapVoltage } = inputs;
  return [
    sensitivitySentence(asFound ? capital(state) : 'Sensitivity', sensitivity),
    kind === 'axial' && zeroConfigured !== null && zeroMeasured !== null
      ? `Zero configured ${amount(zeroConfigured, 'V')}, measured ${amount(zeroMeasured, 'V')}.`
      : '',
    chainSentence(inputs),
    gapVoltage === null ? '' : `Gap voltage ${amount(gapVoltage, 'V')}.`,
    reading === null
      ? 'No present reading is given.'
      : `Panel ${amount(reading, unit ?? '')} now${realReading === null ? '' : `, really ${amount(realReading, unit ?? '')}`}.`,
  ]
    .filter((part) => part !== '')
    .join(' ');
}

/** What else was measured of the chain: the monitor's gain, the uncertainty of a zero, the ends of a loop. */
function chainSentence({ gain, gainUncertainty, zeroUncertainty, loop }: ChannelInputs): string {
  const sure = gainUncertainty === null ? '' : ` ± ${percent(gainUncertainty)}`;
  return [
    gain === 1 && gainUncertainty === null ? '' : `Monitor gain ${amount(gain, '')}${sure}.`,
    zeroUncertainty === null ? '' : `Zero ± ${amount(zeroUncertainty, 'V')}.`,
    loop === null ? '' : `Loop ${amount(loop.at0, 'mA')} at 0 %, ${amount(loop.at100, 'mA')} at 100 %.`,
  ]
    .filter((part) => part !== '')
    .join(' ');
}

function sensitivitySentence(start: string, sensitivity: SensitivityResult): string {
  const { configured, measured, error, uncertainty, coverage, unit } = sensitivity;
  if (configured === null || measured === null) return '';
  const sure =
    uncertainty === null
      ? ', uncertainty not given'
      : ` ± ${percent(uncertainty)} (k = ${amount(coverage ?? NaN, '')})`;
  const off = error === null ? '' : `: ${error > 0 ? '+' : ''}${percent(error)}`;
  return `${start}: configured ${amount(configured, unit ?? '')}, measured ${amount(measured, unit ?? '')}${sure}${off}.`;
}

/** What was found, and what became of each threshold since. */
function foundSentence({ asFound, thresholds }: ChannelResult): string {
  if (!asFound) return '';
  const changes = thresholds.flatMap((threshold) =>
    threshold.change === null ? [] : [`${thresholdName(threshold)} ${threshold.change}`],
  );
  const { gapVoltage, zeroMeasured } = asFound;
  return [
    sensitivitySentence('As found', asFound.sensitivity),
    gapVoltage === null ? '' : `Gap voltage ${amount(gapVoltage, 'V')} as found.`,
    zeroMeasured === null ? '' : `Zero ${amount(zeroMeasured, 'V')} as found.`,
    changes.length === 0 ? '' : `Since then: ${changes.join(', ')}.`,
  ]
    .filter((part) => part !== '')
    .join(' ');
}

/** The calibration record whose curve is a line of evidence. */
function recordSentence({ record, dynamic }: ChannelResult): string {
  const said: string[] = [];
  if (record) {
    const { sheet, row, takenOn, average, gapUnit, straightPart, operatingGap } = record;
    const range = straightPart
      ? `, straight from ${amount(straightPart.from, '')} to ${amount(straightPart.to, gapUnit)}`
      : ', no straight part';
    const gap = operatingGap === null ? '' : `; the probe stands at ${amount(operatingGap, gapUnit)}`;
    said.push(
      `Calibration record${takenOn === null ? '' : ` of ${takenOn}`} (${clipped(sheet)}, row ${row}): ${amount(average, `mV/${gapUnit}`)}${range}${gap}.`,
    );
  }
  if (dynamic) {
    const unit = dynamic.uncertainty === null ? '' : ` ± ${amount(dynamic.uncertainty, '')}`;
    said.push(
      `Check with a known vibration (${clipped(dynamic.sheet)}, row ${dynamic.row}): ${amount(dynamic.sensitivity, '')}${unit} at ${dynamic.levels} ${dynamic.levels === 1 ? 'level' : 'levels'}.`,
    );
  }
  return said.join(' ');
}

/** Zones in which thresholds were meant to act and really act, where they differ. */
function zoneSentence({ thresholds }: ChannelResult): string {
  return thresholds
    .filter(({ zone, intendedZone }) => zone !== null && zone !== intendedZone)
    .map((threshold) => {
      const meant = threshold.intendedZone === null ? '' : `, meant for zone ${threshold.intendedZone}`;
      return `${capital(thresholdName(threshold))} acts in zone ${threshold.zone ?? ''}${meant}.`;
    })
    .join(' ');
}

function exposureSentence({ name, multiplier, from, to, days, goesOn }: Exposure): string {
  const span = [from === null ? '' : `from ${from}`, to === null ? '' : `to ${to}`].filter(
    (part) => part !== '',
  );
  const long = days === null ? 'for an unknown time' : `for up to ${days} days`;
  const now = goesOn === null ? '' : goesOn ? '; it goes on' : '; it has ended';
  const when = span.length === 0 ? '' : ` (${span.join(' ')})`;
  return `Exposure: ${thresholdName({ name, multiplier })} may have been late or unable to act ${long}${when}${now}.`;
}

/** Why thresholds can't be better than not known. */
function obstaclesSentence({ thresholds }: ChannelResult): string {
  const byObstacles = new Map<string, string[]>();
  for (const threshold of thresholds) {
    if (threshold.obstacles.length === 0) continue;
    const key = listed(threshold.obstacles);
    byObstacles.set(key, [...(byObstacles.get(key) ?? []), thresholdName(threshold)]);
  }
  return [...byObstacles].map(([why, names]) => `Not known (${listed(names)}): ${why}.`).join(' ');
}
