import type { NotANumber } from '../../../cells/number.ts';

/** What can be said of calibration records and checks with a known vibration as they are read. */
export interface RawRecordRules {
  'record-without-tag':
    | { readonly kind: 'block'; readonly gapHeader: string; readonly voltsHeader: string }
    | { readonly kind: 'row'; readonly row: number };
  'record-without-channel': { readonly tag: string };
  'record-unit-missing':
    | { readonly kind: 'gap'; readonly header: string }
    | {
        readonly kind: 'too large for volts';
        readonly header: string;
        /** Whether other records of the column were used. */
        readonly othersUsed: boolean;
      }
    | { readonly kind: 'detection'; readonly header: string };
  'record-point-left-out':
    | {
        readonly kind: 'cell';
        readonly header: string;
        readonly cell: string;
        readonly why: NotANumber | 'blank' | 'percentage';
      }
    | { readonly kind: 'below a blank row'; readonly row: number; readonly tag: string }
    | {
        readonly kind: 'second column';
        readonly header: string;
        readonly firstHeader: string;
        readonly firstColumn: string;
      }
    | {
        readonly kind: 'level';
        readonly displacement: number;
        readonly unit: string;
        readonly output: number;
        readonly outputUnit: string;
      };
  'records-of-one-point': { readonly headerRow: number };
}
