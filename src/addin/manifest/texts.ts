import { NAMESPACE } from '../../functions/catalogue.ts';

/** What Excel shows of the add-in outside its own pages. */
export const NAME = 'Tripdrift';

export const DESCRIPTION =
  'Shows where each alert and danger setpoint really acts when a probe chain is not as sensitive as the monitor believes. Advisory only: it changes no monitor and replaces no review.';

/** Identifies the add-in to Office for good: a random UUID (RFC 9562, version 4), never to be changed. */
export const ID = '2bc4a934-2456-4d63-ae55-0f644f8c2b9b';

/** Texts of up to 125 characters, by resource id. */
export const SHORT_TEXTS = {
  'Functions.Namespace': NAMESPACE,
  'Start.Title': 'Tripdrift is ready',
  'Group.Label': NAME,
  'Open.Label': 'Check setpoints',
  'Open.Title': 'Check setpoints',
  'Audit.Label': 'Audit now',
  'Audit.Title': 'Audit this workbook now',
} as const;

/** Texts of up to 250 characters, by resource id. */
export const LONG_TEXTS = {
  'Start.Text':
    'On the Home tab, in the group Tripdrift, choose Check setpoints for a first answer, or Audit now to audit the channel list and monitor settings in this workbook.',
  'Open.Text':
    'Opens the Tripdrift pane: where one setpoint really acts, the audit of this workbook, and the state of its worksheet functions.',
  'Audit.Text':
    'Reads the channel list and the monitor settings of this workbook, and lists the channels whose alert or danger acts too late or too early. Nothing is written until you ask for it.',
} as const;
