/** Instants in the local time of a place, with its zone named. */

/** Writes instants in a time zone. */
export interface Times {
  /** Name of the zone. */
  readonly zone: string;
  /** Day as `2026-03-29`. */
  readonly day: (instant: string) => string;
  /** Time of day as `14:05`. */
  readonly clock: (instant: string) => string;
  /** How far the zone's clock is ahead of UTC at an instant: `UTC+2`. */
  readonly offset: (instant: string) => string;
}

/** Times in a zone by its IANA name; UTC where there is none or it is not known. */
export function timesOf(timeZone: string | undefined): Times {
  const zone = known(timeZone) ? timeZone : 'UTC';
  const format = new Intl.DateTimeFormat('en-GB', {
    timeZone: zone,
    year: 'numeric',
    month: '2-digit',
    day: '2-digit',
    hour: '2-digit',
    minute: '2-digit',
    hourCycle: 'h23',
    timeZoneName: 'shortOffset',
  });
  const part = (instant: string, type: Intl.DateTimeFormatPartTypes): string =>
    format.formatToParts(new Date(instant)).find((each) => each.type === type)?.value ?? '';
  return {
    zone,
    day: (instant) => `${part(instant, 'year')}-${part(instant, 'month')}-${part(instant, 'day')}`,
    clock: (instant) => `${part(instant, 'hour')}:${part(instant, 'minute')}`,
    offset: (instant) => part(instant, 'timeZoneName').replace('GMT', 'UTC'),
  };
}

function known(timeZone: string | undefined): timeZone is string {
  if (typeof timeZone !== 'string') return false;
  try {
    new Intl.DateTimeFormat('en-GB', { timeZone });
    return true;
  } catch {
    return false;
  }
}
