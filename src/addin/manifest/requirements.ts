/**
 * What Excel must offer before it shows the add-in at all. Below ExcelApi 1.11 the pane could not read how the
 * workbook writes its decimals; without SharedRuntime 1.1 pane and functions could not live in one page. Worksheet
 * functions themselves are not demanded: where Excel does not run them, the pane still audits and says so.
 */
export const REQUIREMENTS = {
  Sets: {
    '@DefaultMinVersion': '1.1',
    Set: [
      { '@Name': 'SharedRuntime', '@MinVersion': '1.1' },
      { '@Name': 'ExcelApi', '@MinVersion': '1.11' },
    ],
  },
};
