/** Minutes and dates: the same rounding everywhere, and the language's own way of writing a day. */

/**
 * Minutes of work, never less than one where there is any; hours from 90 on.
 *
 * @example
 * formatMinutes(0.4) // => '1 min'
 * @example
 * formatMinutes(95) // => '1 h 35 min'
 */
export function formatMinutes(minutes: number): string {
  const whole = minutes > 0 ? Math.max(1, Math.round(minutes)) : 0;
  if (whole < 90) return `${whole} min`;
  const rest = whole % 60;
  const hours = `${(whole - rest) / 60} h`;
  return rest === 0 ? hours : `${hours} ${rest} min`;
}

/** Day and time as the language writes them; empty where no clock was stored or it cannot be read. */
export function formatDayAndTime(language: string, at: string | undefined, timeZone?: string): string {
  return formatted(language, at, { dateStyle: 'medium', timeStyle: 'short', ...(timeZone && { timeZone }) });
}

/** The day alone. */
export function formatDay(language: string, at: string | undefined, timeZone?: string): string {
  return formatted(language, at, { dateStyle: 'medium', ...(timeZone && { timeZone }) });
}

function formatted(language: string, at: string | undefined, options: Intl.DateTimeFormatOptions): string {
  const moment = at === undefined ? Number.NaN : Date.parse(at);
  return Number.isNaN(moment) ? '' : new Intl.DateTimeFormat(language, options).format(moment);
}
