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
