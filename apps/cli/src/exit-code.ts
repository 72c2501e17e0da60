/** How a command ends; the numbers are a contract. */
export const exitCodes = {
  done: 0,
  /** The answer says why: something is not met, impossible, in conflict, or has no result. */
  notValid: 1,
  /** What was given cannot be used; nothing was written. */
  badInput: 2,
  /** A fault of the program or of the machine. */
  fault: 3,
} as const;

export type ExitCode = (typeof exitCodes)[keyof typeof exitCodes];
