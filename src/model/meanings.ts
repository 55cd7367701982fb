/**
 * Importing this makes the meanings of rules and of fields known in every language, beside the other words. They stand
 * apart because only the pages that explain them need so much text.
 */
import meanings from './meanings.json' with { type: 'json' };
import './messages.ts';
import { provideMessages } from './say.ts';

provideMessages(meanings);
