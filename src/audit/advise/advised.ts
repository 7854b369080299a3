import type { PlacedFact, RowPlace } from '../model/findings.ts';
import type { Question } from '../read/understand/questions/question.ts';
import type {
  Attention,
  ChannelResult,
  GroupResult,
  NotRead,
  ReplayResult,
  RunUpResult,
} from '../model/report.ts';

/** A judged channel with the facts that come from no verdict of a threshold, and those that keep it from being judged. */
export interface AdvisedChannel {
  readonly result: ChannelResult;
  readonly facts: readonly PlacedFact[];
  readonly invalid: readonly PlacedFact[];
}

/** Monitor settings whose tag is not in the channel list: where their danger acts is not known. */
export interface UnjudgedSettings {
  readonly tag: string;
  /** Empty where its row names none. */
  readonly machine: string;
  readonly danger: number | null;
  readonly unit: string | null;
  readonly place: RowPlace;
  readonly fact: PlacedFact;
}

/** All that the list of what needs action is drawn from. */
export interface Advised {
  /** Worst first. */
  readonly channels: readonly AdvisedChannel[];
  readonly groups: readonly GroupResult[];
  readonly unjudged: readonly UnjudgedSettings[];
  readonly notRead: readonly NotRead[];
  /** What a person has to be asked. */
  readonly questions: readonly Question[];
  readonly replay: ReplayResult | null;
  readonly runUps: RunUpResult | null;
  /** What else there is to say of tables and sheets. */
  readonly problems: readonly PlacedFact[];
}

/** The rows of a channel in both tables. */
export function placesOf({ source }: Pick<ChannelResult, 'source'>): Attention['places'] {
  return [source.channels, ...(source.settings ? [source.settings] : [])].map(({ sheet, row }) => ({
    sheet,
    row,
    column: '',
  }));
}
