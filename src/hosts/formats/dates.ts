const day = 86_400_000;

const durationParts =
  /^(-?)P(?:([\d.,]{1,30})W)?(?:([\d.,]{1,30})D)?(?:T(?:([\d.,]{1,30})H)?(?:([\d.,]{1,30})M)?(?:([\d.,]{1,30})S)?)?$/;

/** 1970-01-01 as a serial number of the 1900 date system. */
const epoch1900 = 25569;
/** Days from 1900's first day number to the one 1904 begins with (ECMA-376 part 1, section 18.17.4.1). */
export const daysTo1904 = 1462;
const epoch1904 = epoch1900 - daysTo1904;
/** Serial number of 9999-12-31, the last date a spreadsheet shows. */
const last1900 = 2958465;

/**
 * Days since 1970-01-01 of a spreadsheet's date serial number; undefined for one that no date is shown for
 * (negative, or after 9999). In the 1900 system, which counts a 29 February 1900 that never was, serials
 * before 60 lie one day later than the rest would have them; that day itself reads as 28 February.
 * Source: ECMA-376 part 1, section 18.17.4.1.
 */
export function dayOfSerial(serial: number, date1904: boolean): number | undefined {
  if (serial < 0 || serial >= (date1904 ? last1900 - daysTo1904 : last1900) + 1) return undefined;
  if (date1904) return serial - epoch1904;
  return serial - epoch1900 + (serial < 60 ? 1 : 0);
}

/** First day of the 1900 system from which serials count on from the day that never was. */
const march1900 = 61 - epoch1900;

/** The serial number of a day counted from 1970-01-01: the opposite of `dayOfSerial`, but for the day that never was. */
export function serialOfDay(day: number, date1904: boolean): number {
  if (date1904) return day + epoch1904;
  return day + epoch1900 - (day < march1900 ? 1 : 0);
}

/**
 * Days since 1970-01-01 of an ISO 8601 date with or without a time of day, `2026-03-01T06:00:00`; undefined where it is
 * none. A time on 1899-12-30, which strict files of the 1900 date system take for its day 0, stands on 1899-12-31, which is
 * day 0 wherever the system counts a 29 February 1900 (ECMA-376 part 1, section 18.17.4.1).
 */
export function dayOfIso(text: string): number | undefined {
  if (!/^\d{4}-\d{2}-\d{2}(T\d{2}:\d{2}(:\d{2}([.,]\d{1,30})?)?)?Z?$/.test(text)) return undefined;
  const milliseconds = Date.parse(
    `${text.replace('Z', '').replace(',', '.')}${text.includes('T') ? 'Z' : ''}`,
  );
  // A day that its month does not have would otherwise roll over into the next.
  const exists =
    !Number.isNaN(milliseconds) && new Date(milliseconds).toISOString().startsWith(text.slice(0, 10));
  if (!exists) return undefined;
  const isTimeAlone = text.startsWith('1899-12-30T');
  return milliseconds / day + (isTimeAlone ? 1 : 0);
}

/** Part of a day that an ISO 8601 time of day is, `06:30`, `T06:30:15.5` or `24:00`; undefined where it is none. */
export function timeOfIso(text: string): number | undefined {
  const match = /^T?(\d{2}):(\d{2})(?::(\d{2}(?:[.,]\d{1,30})?))?Z?$/.exec(text);
  if (match === null) return undefined;
  const [hours, minutes, seconds] = match.slice(1).map(numberOf) as [number, number, number];
  const time = (hours * 3600 + minutes * 60 + seconds) / 86_400;
  return minutes < 60 && seconds < 60 && time <= 1 ? time : undefined;
}

/** Days of an ISO 8601 duration, `PT36H15M` or `P1DT12H`; undefined where it is none, or counts months or years, which have no fixed length. */
export function durationOfIso(text: string): number | undefined {
  const [, sign, ...parts]: readonly (string | undefined)[] = durationParts.exec(text) ?? [];
  if (parts.every((part) => part === undefined) || text.endsWith('T')) return undefined;
  const [weeks, days, hours, minutes, seconds] = parts.map(numberOf) as [
    number,
    number,
    number,
    number,
    number,
  ];
  const length = weeks * 7 + days + (hours * 3600 + minutes * 60 + seconds) / 86_400;
  if (!Number.isFinite(length)) return undefined;
  return sign === '-' ? -length : length;
}

function numberOf(part: string | undefined): number {
  return part === undefined ? 0 : Number(part.replace(',', '.'));
}
