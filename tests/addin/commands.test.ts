import { describe, expect, it } from 'vitest';
import { ASKED, type PanePage, registerCommands } from '../../src/addin/commands.ts';

class Page extends EventTarget implements PanePage {
  readonly documentElement = { dataset: {} as Record<string, string | undefined> };
}

function office(show: () => Promise<void>) {
  const commands = new Map<string, (event: { completed(): void }) => void>();
  return {
    commands,
    actions: {
      associate: (id: string, run: (event: { completed(): void }) => void) => {
        commands.set(id, run);
      },
    },
    addin: { showAsTaskpane: show },
  };
}

describe('the ribbon button Audit now', () => {
  it('leaves the wish for a pane that comes later, tells one that listens, and reports its end', async () => {
    const said: string[] = [];
    const host = office(() => {
      said.push('shown');
      return Promise.resolve();
    });
    const page = new Page();
    page.addEventListener(ASKED, () => said.push(`asked for ${page.documentElement.dataset['asked'] ?? ''}`));
    registerCommands(host, page);
    expect(page.documentElement.dataset).toEqual({});
    await new Promise<void>((completed) => host.commands.get('auditNow')?.({ completed }));
    expect(said).toEqual(['asked for audit', 'shown']);
  });

  it('reports its end where Excel cannot show the pane', async () => {
    const host = office(() => Promise.reject(new Error('not now')));
    registerCommands(host, new Page());
    await new Promise<void>((completed) => host.commands.get('auditNow')?.({ completed }));
  });
});
