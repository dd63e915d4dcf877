/** Reasons in one tap; their words are `bench.reason.<id>`. Any other is typed. */
export const ONE_TAP_REASONS = ['asked-again', 'seen', 'measured', 'tried-on', 'mistapped'] as const;
/** The reason that needs no tap: nobody had answered before. */
export const ASKED_NOW = 'asked-now';
