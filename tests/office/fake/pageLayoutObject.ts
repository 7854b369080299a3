import type { HostObject } from './hostObject.ts';
import type { FakeSheet } from './sheet.ts';

const margins = ['LeftMargin', 'RightMargin', 'TopMargin', 'BottomMargin', 'FooterMargin', 'HeaderMargin'];

export function pageLayoutObject(sheet: FakeSheet, write: () => void): HostObject {
  const keep = (name: string): [string, (value: unknown) => void] => [
    name,
    (value) => {
      write();
      sheet.page.set(name, value);
    },
  ];
  return {
    set: Object.fromEntries(['Orientation', 'PaperSize', 'Zoom', ...margins].map(keep)),
    methods: Object.fromEntries([keep('SetPrintTitleRows'), keep('SetPrintArea')]),
    parts: {
      HeadersFooters: () => ({
        parts: {
          DefaultForAllPages: () => ({
            set: Object.fromEntries(['LeftFooter', 'CenterFooter', 'RightFooter'].map(keep)),
          }),
        },
      }),
    },
  };
}
