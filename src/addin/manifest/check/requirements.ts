import { type Element, type Fault, at } from './element.ts';

/** Sets that a manifest for Excel may name. Source: Microsoft, "Excel JavaScript API requirement sets" and "Set". */
const SETS =
  /^(ExcelApi|SharedRuntime|CustomFunctionsRuntime|AddinCommands|DialogApi|RibbonApi|KeyboardShortcuts)$/;

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
