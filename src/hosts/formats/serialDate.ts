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
