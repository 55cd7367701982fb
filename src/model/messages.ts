/** Importing this makes the words of every language known. */
import messages from './messages.json' with { type: 'json' };
import { provideMessages } from './say.ts';

provideMessages(messages);
