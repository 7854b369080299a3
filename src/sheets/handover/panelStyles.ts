import { level } from '../../audit/model/wording.ts';
import { tones } from '../style/palette.ts';
import { widthOfText } from '../style/textWidth.ts';
import type { CellStyle } from '../model.ts';

/** How a number stands on the page: the danger largest. */
export type Weight = 'danger' | 'alert' | 'plain';

const sizes: Readonly<Record<Weight, readonly number[]>> = {
  danger: [18, 15, 12, 9, 7],
  alert: [14, 12, 10, 8, 7],
  plain: [11, 10, 9, 8, 7],
};

/** Styles of numbers with their unit, made as they are needed: as many decimals as the instrument shows, or one more. */
export interface PanelStyles {
  /** Name of the style in which a number stands in a cell of `width` characters. */
  styleOf(value: number, shown: Shown, weight: Weight, width: number): string;
  readonly all: Readonly<Record<string, CellStyle>>;
}

export interface Shown {
  readonly resolution: number | null;
  readonly unit: string | null;
}

export function panelStyles(): PanelStyles {
  const all: Record<string, CellStyle> = {};
  return {
    all,
    styleOf: (value, { resolution, unit }, weight, width) => {
      const text = level(value, resolution);
      const decimals = text.split('.')[1]?.length ?? 0;
      const behind = unitText(unit);
      // A number that does not fit shows as ###: room for its text and a little more.
      const size =
        sizes[weight].find((one) => (widthOfText(`${text}${behind}`) * one * 1.12) / 11 <= width) ?? 7;
      const name = `${weight} ${size} ${decimals}${behind}`;
      all[name] ??= {
        bold: weight !== 'plain',
        size,
        color: tones.ink,
        align: 'center',
        valign: 'center',
        underline: true,
        numberFormat: format(decimals, behind),
      };
      return name;
    },
  };
}

/** A unit behind its number; none where it would not be read as a unit. */
function unitText(unit: string | null): string {
  const plain = (unit ?? '').replace(/["\\\s\p{Cc}]+/gu, ' ').trim();
  return plain === '' || plain.length > 12 ? '' : ` ${plain}`;
}

function format(decimals: number, behind: string): string {
  const digits = `0${decimals === 0 ? '' : `.${'0'.repeat(decimals)}`}`;
  const plain = behind === '' ? digits : `${digits}"${behind}"`;
  return `${plain};"−"${plain}`;
}
