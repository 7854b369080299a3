import type { Session } from './session.ts';

/**
 * Follows one of Excel's events. `heard` says whether an event is worth telling; those that come while one is told are told
 * together after it, and what can't be told now is told with the next event. `tell` asks the workbook and gives a step that
 * calls back, which is left out once following was stopped. The returned function stops it; `failed` begins the refusal
 * where Excel refuses to follow.
 */
export function follow<Event>(
  session: Session,
  failed: string,
  event: (workbook: Excel.Workbook) => OfficeExtension.EventHandlers<Event>,
  heard: (event: Event) => boolean,
  tell: () => Promise<() => void>,
): Promise<() => void> {
  let waiting = false;
  let asking = false;
  let stopped = false;

  const tellAll = async (): Promise<void> => {
    asking = true;
    try {
      while (waiting) {
        waiting = false;
        const callBack = await tell();
        if (!stopped) callBack();
      }
    } finally {
      asking = false;
    }
  };

  return session.run(failed, async (context) => {
    const registration = event(context.workbook).add((args) => {
      if (heard(args)) {
        waiting = true;
        if (!asking) tellAll().catch(() => undefined);
      }
      return Promise.resolve();
    });
    await context.sync();
    return () => {
      stopped = true;
      registration.remove();
      registration.context.sync().catch(() => undefined);
    };
  });
}
