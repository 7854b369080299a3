import { type Element, type Fault, at, everyElement, value } from './element.ts';

/** Sets that a manifest for Excel may name. Source: Microsoft, "Excel JavaScript API requirement sets" and "Set". */
const SETS =
  /^(ExcelApi|SharedRuntime|CustomFunctionsRuntime|AddinCommands|DialogApi|RibbonApi|KeyboardShortcuts)$/;

/**
 * The shared runtime: one long-lived page that is pane, functions and commands. Every reference to it has to be the
 * same, or Excel starts none. Source: Microsoft, "Configure your Office Add-in to use a shared runtime".
 */
export function checkRuntime(root: Element): Fault[] {
  const runtime = everyElement(root).find(({ name }) => name === 'Runtime');
  if (runtime === undefined) return [];
  const faults: Fault[] = [];
  if (runtime.attributes['lifetime'] !== 'long') {
    faults.push({ line: runtime.line, message: '<Runtime> needs lifetime="long" for a shared runtime' });
  }
  const page = runtime.attributes['resid'];
  for (const { name, line, attributes } of everyElement(root).filter(isPage)) {
    if (attributes['resid'] !== page) {
      const message = `<${name}> refers to "${attributes['resid'] ?? ''}"; the shared runtime is "${page ?? ''}"`;
      faults.push({ line, message });
    }
  }
  for (const { line } of everyElement(root).filter(({ name }) => name === 'TaskpaneId')) {
    faults.push({ line, message: 'a shared runtime has one pane: leave out <TaskpaneId>' });
  }
  return [...faults, ...checkStart(root, page)];
}

function isPage({ name, parent }: Element): boolean {
  if (name === 'FunctionFile') return true;
  return (
    name === 'SourceLocation' &&
    (parent?.name === 'Page' || parent?.attributes['xsi:type'] === 'ShowTaskpane')
  );
}

/** The page in the base manifest has to be the page of the runtime, or Office loads the add-in twice. */
function checkStart(root: Element, page: string | undefined): Fault[] {
  const start = at(root, 'DefaultSettings', 'SourceLocation')[0];
  const address = at(root, 'VersionOverrides', 'Resources', 'Urls', 'Url').find(
    ({ attributes }) => attributes['id'] === page,
  );
  if (start === undefined || address === undefined || value(start) === value(address)) return [];
  return [
    { line: start.line, message: `<SourceLocation> differs from the page of the runtime, ${value(address)}` },
  ];
}

/** Requirement sets without a known name or a version. */
export function checkRequirements(root: Element): Fault[] {
  return at(root, 'Requirements', 'Sets', 'Set').flatMap(({ attributes, line }) => {
    const name = attributes['Name'] ?? '';
    const version = attributes['MinVersion'] ?? '';
    if (!SETS.test(name))
      return [{ line, message: `<Set> names "${name}", which no manifest for Excel may` }];
    return /^\d+\.\d+$/.test(version)
      ? []
      : [{ line, message: `<Set Name="${name}"> needs a version such as 1.1` }];
  });
}
