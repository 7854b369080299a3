/** What a tag is compared by: spaces of any kind that look the same count as the same. */
export function tagKey(tag: string): string {
  return tag.trim().replace(/\s+/gu, ' ').toLowerCase();
}
