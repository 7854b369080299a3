/** Texts of the pane around its views, and of its start. */
export const appMessages = {
  name: 'Tripdrift',
  views: 'Views',
  quick: 'Quick answer',
  audit: 'Audit',
  care: 'Care',
  cautionShort: 'Advisory only. Correct the measuring chain first.',
  starting: 'Starting…',
  noAnswer:
    'Excel has not answered for 10 seconds. It may still be starting: this pane goes on waiting. If nothing happens, close the pane and open it again, and if that does not help, restart Excel.',
  failed: 'The pane could not start.',
  example:
    'No spreadsheet program is behind this page. It shows an invented example workbook that is held in memory: nothing you do here is saved.',
  outsideExcel: 'This add-in works in Excel. Here it shows an invented example workbook; nothing is saved.',
} as const;
