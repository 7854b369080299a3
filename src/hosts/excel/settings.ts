import type { Session } from './session.ts';

/** Before each key, so that the add-in's documents are told from those of other add-ins. */
const prefix = 'tripdrift.';

/** A document of the add-in's own out of the workbook's settings, as it was written; `null` where there is none, and its bare text where that is no JSON. */
export function readSetting(session: Session, key: string): Promise<unknown> {
  return session.run('What the workbook remembers could not be read', async (context) => {
    const setting = context.workbook.settings.getItemOrNullObject(prefix + key);
    setting.load('value');
    await context.sync();
    if (setting.isNullObject) return null;
    const stored: unknown = setting.value;
    return typeof stored === 'string' ? parsed(stored) : stored;
  });
}

/** Writes such a document, anything that JSON can hold; `null` takes it away. It is kept once the user saves the workbook. */
export function writeSetting(session: Session, key: string, value: unknown): Promise<void> {
  return session.run('The workbook could not remember it', async (context) => {
    const { settings } = context.workbook;
    if (value === null) {
      const setting = settings.getItemOrNullObject(prefix + key);
      await context.sync();
      if (setting.isNullObject) return;
      setting.delete();
    } else settings.add(prefix + key, JSON.stringify(value));
    await context.sync();
  });
}

function parsed(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return text;
  }
}
