import type { Detection } from '../../../units/parse.ts';
import type { Kind } from '../kind.ts';

/** What can be said of units and of how a size of vibration is counted. */
export interface UnitRules {
  /** The quantity as a sentence names it, and a unit that it can have. */
  'unit-missing': { readonly what: string; readonly example: string };
  'unit-does-not-fit':
    | {
        readonly kind: 'level';
        readonly value: number;
        readonly unit: string;
        readonly setpointUnit: string;
      }
    | {
        readonly kind: 'sensitivities';
        readonly which: 'measured' | 'as left';
        readonly unit: string;
        readonly configuredUnit: string;
      }
    | {
        readonly kind: 'detections';
        readonly measured: Detection | null;
        readonly configured: Detection | null;
      }
    | { readonly kind: 'setpoints'; readonly unit: string; readonly sensitivityUnit: string }
    | {
        readonly kind: 'channel kind';
        readonly channelKind: Kind;
        readonly quantity: string;
        readonly unit: string;
      };
  /** A level whose detection is said while that of the setpoints is not, or the other way. */
  'detection-not-said': {
    readonly quantity: string;
    readonly own: Detection | null;
    readonly ofSetpoints: Detection | null;
  };
  'unit-assumed': { readonly header: string; readonly unit: string; readonly row: number };
  /** Every unit, and the rows in which the first and the second of them stand first. */
  'units-mixed': { readonly units: readonly string[]; readonly rows: readonly [number, number] };
  /** `factor`: what a size counted by the header is multiplied by to be counted by the column. */
  'detection-contradicts-header': {
    readonly ofColumn: Detection;
    readonly ofHeader: Detection;
    readonly factor: number;
  };
}
