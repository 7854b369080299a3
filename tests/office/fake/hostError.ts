/** Excel refuses, with one of its documented codes. */
export class HostError extends Error {
  constructor(
    readonly code: string,
    message = code,
  ) {
    super(message);
  }
}

export function invalidArgument(): HostError {
  return new HostError('InvalidArgument', 'The argument is invalid or missing or has an incorrect format.');
}

export function itemNotFound(): HostError {
  return new HostError('ItemNotFound', 'The requested resource doesn’t exist.');
}

export function accessDenied(): HostError {
  return new HostError('AccessDenied', 'You cannot perform the requested operation.');
}
