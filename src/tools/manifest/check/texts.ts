import { type Element, type Fault, at, everyElement, value } from './element.ts';

interface TextRule {
  readonly path: readonly string[];
  /** Longest text, in characters. */
  readonly longest?: number;
  readonly form?: RegExp;
  readonly cure?: string;
}

const RESOURCES = ['VersionOverrides', 'Resources'] as const;

/**
 * Source: Microsoft, add-in only manifest reference (one page an element) and [MS-OWEMXML]; the form of Id is RFC 9562.
 */
const RULES: readonly TextRule[] = [
  {
    path: ['Id'],
    form: /^[\da-f]{8}-[\da-f]{4}-4[\da-f]{3}-[89ab][\da-f]{3}-[\da-f]{12}$/i,
    cure: 'a random UUID, such as crypto.randomUUID() gives',
  },
  { path: ['Version'], form: /^\d{1,5}(\.\d{1,5}){2,3}$/, cure: 'three or four numbers with dots' },
  { path: ['ProviderName'], longest: 125 },
  { path: ['DefaultLocale'], form: /^[a-z]{2,3}(-[A-Za-z]{4})?-[A-Z]{2}$/, cure: 'a language such as en-US' },
  { path: ['DisplayName'], longest: 125 },
  { path: ['Description'], longest: 250 },
  {
    path: ['Permissions'],
    form: /^(Restricted|ReadDocument|ReadAllDocument|WriteDocument|ReadWriteDocument)$/,
    cure: 'one of the permissions that Office knows',
  },
  { path: ['Hosts', 'Host'] },
  { path: [...RESOURCES, 'Urls', 'Url'], longest: 2048 },
  { path: [...RESOURCES, 'Images', 'Image'], longest: 2048 },
  { path: [...RESOURCES, 'ShortStrings', 'String'], longest: 125 },
  { path: [...RESOURCES, 'LongStrings', 'String'], longest: 250 },
];

/** Texts that are empty, too long or of the wrong form; ids of the ribbon that are too long or stand twice. */
export function checkTexts(root: Element): Fault[] {
  return [
    ...RULES.flatMap((rule) => at(root, ...rule.path).flatMap((element) => faultsIn(element, rule))),
    ...checkIds(root),
  ];
}

function faultsIn(element: Element, { longest, form, cure }: TextRule): Fault[] {
  const { line, name } = element;
  const text = name === 'Host' ? (element.attributes['Name'] ?? '') : value(element);
  if (text === '') return [{ line, message: `<${name}> is empty` }];
  const length = Array.from(text).length;
  if (longest !== undefined && length > longest) {
    return [{ line, message: `<${name}> has ${length} characters; at most ${longest} are allowed` }];
  }
  if (form !== undefined && !form.test(text)) {
    return [{ line, message: `<${name}> is "${text}"; it has to be ${cure ?? 'of another form'}` }];
  }
  return [];
}

function checkIds(root: Element): Fault[] {
  const faults: Fault[] = [];
  const seen = new Set<string>();
  for (const { name, line, attributes } of everyElement(root)) {
    if (name !== 'Group' && name !== 'Control' && name !== 'CustomTab') continue;
    const id = attributes['id'] ?? '';
    if (id === '' || id.length > 125) {
      faults.push({ line, message: `<${name}> needs an id of 1 to 125 characters` });
    }
    if (seen.has(id)) faults.push({ line, message: `id "${id}" stands twice` });
    seen.add(id);
  }
  return faults;
}
