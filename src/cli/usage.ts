/** Wrong usage of the command line: said on standard error, exit status 2. */
export class UsageError extends Error {}
