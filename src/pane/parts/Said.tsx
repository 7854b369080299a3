import type { JSX } from 'preact';
import { shownText } from './shownText.ts';

/** Text that comes from the workbook, set apart from the direction of the text around it. */
export function Said({ text, most = 400 }: { text: string; most?: number }): JSX.Element {
  return (
    <bdi class="said" dir="auto">
      {shownText(text, most)}
    </bdi>
  );
}
