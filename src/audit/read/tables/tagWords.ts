/** Other headers of the tag column. */
export const tagWords = [
  'tag no',
  'tag number',
  'tag name',
  'tag id',
  'channel tag',
  'point tag',
  'instrument tag',
  'channel',
  'point',
  'instrument',
];
