export type { Language } from '../../model/language.ts';
