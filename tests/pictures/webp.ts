/// <reference lib="dom" />
import type { Browser } from 'playwright-core';

/**
 * A PNG as WebP with every pixel as it was, which takes a fraction of the bytes. The browser's own encoder packs without
 * loss at quality 1 (from memory; the file's own chunks tell).
 */
export async function packed(browser: Browser, png: Uint8Array): Promise<Uint8Array> {
  const page = await browser.newPage();
  try {
    const address = `data:image/png;base64,${Buffer.from(png).toString('base64')}`;
    const bytes = await page.evaluate(async (source) => {
      const image = new Image();
      image.src = source;
      await image.decode();
      const canvas = new OffscreenCanvas(image.naturalWidth, image.naturalHeight);
      canvas.getContext('2d', { alpha: false })!.drawImage(image, 0, 0);
      const blob = await canvas.convertToBlob({ type: 'image/webp', quality: 1 });
      return Array.from(new Uint8Array(await blob.arrayBuffer()));
    }, address);
    const webp = Uint8Array.from(bytes);
    if (!chunksOf(webp).includes('VP8L')) throw new Error('The browser packed a picture with loss.');
    return webp;
  } finally {
    await page.close();
  }
}

/** Names of the chunks of a WebP file; one `VP8L` holds a picture without loss. Source: RFC 9649, section 2 (from memory). */
function chunksOf(webp: Uint8Array): string[] {
  const file = Buffer.from(webp);
  const names = [];
  for (let at = 12; at + 8 <= file.length; at += 8 + 2 * Math.ceil(file.readUInt32LE(at + 4) / 2)) {
    names.push(file.toString('latin1', at, at + 4));
  }
  return names;
}
