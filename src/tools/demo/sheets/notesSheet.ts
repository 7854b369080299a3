import type { SheetModel } from '../../../sheets/model.ts';
import { handKeptStyles } from './writtenCell.ts';

const notes: readonly string[] = [
  'This station is invented. It shows how such a register looks after some years in many hands.',
  'Sensitivities are those found at the calibration, before anything was put right. Uncertainties with coverage factor 2.',
  'Shaft vibration: two probes a bearing, 90° apart, mV/mil and mil peak to peak. K-201 came with metric monitors: mV/µm and µm.',
  'Thrust positions count from the middle of the float, positive towards the active side.',
  'Reading: what the monitor showed on the day of the calibration.',
  'Limit: greatest real displacement at which the machine may be tripped, from the clearance drawings.',
  'The gap chart shows the channel list as it stands, mistakes included.',
  'A gap voltage in its band says nothing about the sensitivity.',
];

/** A spare sheet with what one has to know about the register. */
export function notesSheet(): SheetModel {
  return {
    name: 'Notes',
    widths: [110],
    styles: handKeptStyles,
    formulas: [],
    rowCount: notes.length + 2,
    *rows() {
      yield { cells: [{ value: 'Notes on this register', style: 'title' }] };
      yield { cells: [] };
      for (const value of notes) yield { cells: [{ value, style: 'prose' }] };
    },
    print: { landscape: false },
  };
}

/** The sheet on which the chart of the gap voltages stands. */
export function gapChartSheet(): SheetModel {
  return {
    name: 'Gap chart',
    widths: [],
    styles: handKeptStyles,
    formulas: [],
    rowCount: 1,
    *rows() {
      yield { cells: [{ value: 'Gap voltages as found', style: 'title' }] };
    },
    print: { landscape: true },
  };
}
