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

/** What a channel is told apart by: its machine and its tag, each as `tagKey` compares them. */
export function channelKey({ machine, tag }: { readonly machine: string; readonly tag: string }): string {
  return `${tagKey(machine)}\n${tagKey(tag)}`;
}

/** What a tag is compared by: spaces of any kind that look the same count as the same. */
export function tagKey(tag: string): string {
  const key = tag.trim().toLowerCase();
  return /\s/u.test(key) ? key.replace(/\s+/gu, ' ') : key;
}
