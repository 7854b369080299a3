/** Dark and quiet text, and the fills of headers, captions and cells that are meant to be changed; how verdicts look, `verdictMarks` says. */
export const tones = {
  ink: '1F2A33',
  quiet: '5B6770',
  header: 'E3E8EB',
  caution: 'F2F4F5',
  input: 'FFF9E8',
  /** The frame around what is pointed at. */
  pointed: '9A4A00',
} as const;
