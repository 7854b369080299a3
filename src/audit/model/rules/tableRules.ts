/** A cell as the spreadsheet names it. */
interface Cell {
  readonly sheet: string;
  readonly row: number;
  readonly column: string;
}

/** Why something that looks like a part of the audit was left aside. */
export type LeftAside =
  | 'not certain'
  | 'no unit'
  | 'no meaning'
  | 'rival'
  | 'hidden'
  | 'no names'
  | 'no headers'
  | 'sums up'
  | 'spare'
  | 'heading'
  | 'no tag'
  | 'header again'
  | 'calibration record'
  | 'left out'
  | 'tables differ'
  | 'twice'
  | 'machine not said'
  | 'no settings'
  | 'no probe'
  | 'unusable';

/** How the machine of a list without a column for it was told. */
export type MachineSource =
  'a label' | 'the name of its sheet' | 'a heading' | 'what you said' | 'something else';

/** What can be said of lists that are not kept in the standard shape. */
export interface UntidyRules {
  /** A field that may have a meaning: nobody has said so, so it is not used. */
  'meaning-not-certain': { readonly quantity: string; readonly header: string };
  'lists-differ': { readonly quantity: string; readonly places: readonly Cell[] };
  'machine-not-said': { readonly tag: string; readonly places: readonly Cell[] };
  'machine-of-list': { readonly machine: string; readonly sheet: string; readonly told: MachineSource };
  /** `looksLike`: in plain words. */
  'left-aside': { readonly text: string; readonly looksLike: string; readonly why: LeftAside };
  /** Calibration records or readings of a tag that stands on several machines. */
  'record-of-several-machines': { readonly tag: string; readonly machines: readonly string[] };
}

/** What can be said of tables, their rows and their tags. */
export interface TableRules {
  'row-without-tag': { readonly row: number };
  'heading-or-remark': { readonly row: number; readonly text: string };
  'header-repeated': { readonly row: number };
  'hidden-sheet': {
    readonly sheet: string;
    readonly holds: 'table' | 'calibration records' | 'history';
  };
  'hidden-row': { readonly sheet: string; readonly row: number };
  'row-below-table': { readonly row: number; readonly tableEnd: number };
  'header-remark': { readonly header: string };
  'earlier-result': { readonly sheet: string };
  /** `sheet`: where the settings stand. */
  'duplicate-tag':
    | { readonly kind: 'in channel list'; readonly tag: string; readonly rows: readonly number[] }
    | {
        readonly kind: 'in settings of a channel';
        readonly tag: string;
        readonly rows: readonly number[];
        readonly sheet: string;
      }
    | { readonly kind: 'in settings'; readonly tag: string; readonly rows: readonly number[] };
  /** `sheet`: where the settings stand. */
  'channel-without-settings': { readonly tag: string; readonly sheet: string };
  'settings-not-joined': { readonly tag: string };
  /** `sheet`: where the channel list stands. */
  'settings-without-channel': { readonly tag: string; readonly sheet: string };
}
