import { imageSize } from 'image-size';
import { type Element, type Fault, at, everyElement, value } from './element.ts';

/** Source: Microsoft, add-in only manifest reference, "Icon", "IconUrl", "HighResolutionIconUrl". */
const REQUIRED = [16, 32, 80] as const;
const ALLOWED: readonly number[] = [16, 20, 24, 32, 40, 48, 64, 80];
const LIST_SIZES = { IconUrl: 32, HighResolutionIconUrl: 64 } as const;
/** In bytes. Source: [MS-OWEMXML], note at the image resources. */
const LARGEST_FILE = 100 * 1024;

/** Icons that lack a size, or whose file is not a PNG of the size they are used at. `file` reads a built file. */
export function checkIcons(root: Element, file: (address: string) => Uint8Array | undefined): Fault[] {
  const addresses = new Map(
    at(root, 'VersionOverrides', 'Resources', 'Images', 'Image').map((image) => [
      image.attributes['id'],
      value(image),
    ]),
  );
  const icons = everyElement(root).filter(({ name }) => name === 'Icon');
  const listed = Object.entries(LIST_SIZES).flatMap(([name, size]) =>
    at(root, name).flatMap((element) => checkFile(element, value(element), size, file)),
  );
  const drawn = icons
    .flatMap(({ children }) => children)
    .flatMap((image) => {
      const address = addresses.get(image.attributes['resid']);
      return address === undefined ? [] : checkFile(image, address, Number(image.attributes['size']), file);
    });
  return [...icons.flatMap(checkSizes), ...listed, ...drawn];
}

function checkSizes({ children, line, parent }: Element): Fault[] {
  const sizes = children.map(({ attributes }) => Number(attributes['size']));
  const owner = `icon of <${parent?.name ?? ''} id="${parent?.attributes['id'] ?? ''}">`;
  const missing = REQUIRED.filter((size) => !sizes.includes(size));
  const odd = sizes.filter((size, index) => !ALLOWED.includes(size) || sizes.indexOf(size) !== index);
  return [
    ...missing.map((size) => ({ line, message: `${owner} lacks the size ${size}` })),
    ...odd.map((size) => ({
      line,
      message: `${owner} has a size ${size} that Office does not know, or twice`,
    })),
  ];
}

function checkFile(
  { line }: Element,
  address: string,
  size: number,
  file: (address: string) => Uint8Array | undefined,
): Fault[] {
  const bytes = file(address);
  if (bytes === undefined) return []; // the addresses are checked elsewhere
  if (bytes.length > LARGEST_FILE) return [{ line, message: `${address} is larger than 100 KB` }];
  const picture = pictureSize(bytes);
  return picture === `png ${size}×${size}`
    ? []
    : [{ line, message: `${address} has to be a PNG of ${size}×${size} pixels; it is ${picture}` }];
}

function pictureSize(bytes: Uint8Array): string {
  try {
    const { type = '', width, height } = imageSize(bytes);
    return `${type} ${width}×${height}`;
  } catch {
    return 'no picture';
  }
}
