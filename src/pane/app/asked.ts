/** Event on the document by which a button outside the pane asks for something; what, stands in `data-asked` of the page. */
const askedEvent = 'tripdrift-asked';

/**
 * Calls back whenever a button outside the pane, such as the host's own *Audit now*, asks for an audit; at once where it
 * was asked before the pane was there. The returned function stops it.
 */
export function onAuditAsked(page: Document, listener: () => void): () => void {
  const take = (): void => {
    if (page.documentElement.dataset['asked'] !== 'audit') return;
    delete page.documentElement.dataset['asked'];
    listener();
  };
  page.addEventListener(askedEvent, take);
  take();
  return () => {
    page.removeEventListener(askedEvent, take);
  };
}
