import { contentPolicy } from '../addin/contentPolicy.ts';

/**
 * The policy of the add-in's own pages, but for styles that the grid sets on elements as it draws, and for the worker that
 * reads and writes files.
 */
export const benchPolicy = contentPolicy(false)
  .replace("style-src 'self'", "style-src 'self' 'unsafe-inline'")
  .concat("; worker-src 'self'");
