/** The languages that numbers and dates can be written in. */
export type Language = 'en';
