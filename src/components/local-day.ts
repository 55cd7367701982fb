/** The day on this device, year-month-day. */
export function localDay(moment: Date): string {
  const two = (number: number) => String(number).padStart(2, '0');
  return `${String(moment.getFullYear())}-${two(moment.getMonth() + 1)}-${two(moment.getDate())}`;
}

/** The reader's own day, by which a date lies in the future. */
export const today = (): string => localDay(new Date());
