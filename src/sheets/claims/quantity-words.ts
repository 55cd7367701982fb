import data from './quantity-words.json' with { type: 'json' };

/** The words by which quantities are told from one another, of one language. */
export type QuantityWords = (typeof data)['en'];

/** Those of a language. Of a third one, what is written in signs alone is still found. */
export function quantityWords(language: string): QuantityWords {
  const primary = language.split('-')[0]?.toLowerCase();
  return primary === 'es' ? (data.es as unknown as QuantityWords) : data.en;
}
