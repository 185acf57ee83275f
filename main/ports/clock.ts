// The only place that knows what time it is.

/** Answers the present instant, UTC, as ISO text. */
export type Clock = () => string;

export const systemClock: Clock = () => new Date().toISOString();
