import { say } from '../model/say.ts';
import type { WorkbookFault } from '../read/workbook.ts';

/** Why a file cannot be brought in, and what to do, in a sentence. */
export function whyNotRead(fault: WorkbookFault): string {
  if (fault === 'empty') return say('The file is empty.');
  if (fault === 'locked')
    return say(
      'The file is locked with a password, or in an old format: open it in the spreadsheet and save it as .xlsx or .ods without a password.',
    );
  if (fault === 'too large')
    return say('The file is larger than any harvest: save the sheet with the weights as a file of its own.');
  if (fault === 'open quote')
    return say(
      'A quotation mark is opened in it and never closed, so that rows run into each other: take it out.',
    );
  return say('The file is no spreadsheet that can be read: save it as .xlsx, .ods or CSV.');
}
