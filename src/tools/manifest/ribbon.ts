import { AUDIT_COMMAND } from '../../addin/commands.ts';
import { ICON_SIZES } from '../addin/files.ts';

/** A reference to a text, an image or an address among the resources. */
export interface Reference {
  readonly '@resid': string;
}

export function reference(id: string): Reference {
  return { '@resid': id };
}

export function iconId(size: number): string {
  return `Icon.${size}`;
}

const ICON = {
  'bt:Image': ICON_SIZES.map((size) => ({ '@size': size, ...reference(iconId(size)) })),
};

const OPEN_BUTTON = {
  '@xsi:type': 'Button',
  '@id': 'Tripdrift.Open',
  Label: reference('Open.Label'),
  Supertip: { Title: reference('Open.Title'), Description: reference('Open.Text') },
  Icon: ICON,
  Action: { '@xsi:type': 'ShowTaskpane', SourceLocation: reference('Pane.Url') },
};

const AUDIT_BUTTON = {
  '@xsi:type': 'Button',
  '@id': 'Tripdrift.Audit',
  Label: reference('Audit.Label'),
  Supertip: { Title: reference('Audit.Title'), Description: reference('Audit.Text') },
  Icon: ICON,
  Action: { '@xsi:type': 'ExecuteFunction', FunctionName: AUDIT_COMMAND },
};

/** A group of our own on the built-in Home tab. */
export const RIBBON = {
  '@xsi:type': 'PrimaryCommandSurface',
  OfficeTab: {
    '@id': 'TabHome',
    Group: {
      '@id': 'Tripdrift.Group',
      Label: reference('Group.Label'),
      Icon: ICON,
      Control: [OPEN_BUTTON, AUDIT_BUTTON],
    },
  },
};
