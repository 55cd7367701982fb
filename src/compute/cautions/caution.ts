/** What a trial or a page may contain that calls for cautions. */
export const topics = [
  'salts',
  'nitrate salts',
  'acids and alkalis',
  'stocks',
  'solution',
  'open water',
  'still water',
  'food',
  'under a roof',
  'cultivars',
  'plants',
] as const;

export type Topic = (typeof topics)[number];

/** One entry of the reviewed list, `cautions.json`. */
export interface Caution {
  id: string;
  /** What calls for it. */
  topic: Topic;
  /** Where given, only for these: beginnings, whole words, of the scientific or the common name. */
  species?: readonly string[];
  heading: string;
  /** What can go wrong and the usual care, for a grower. */
  text: string;
  /** Whose word comes before ours. */
  defers: string;
  /** Where it is from; says so where it is from memory or common practice. */
  source: string;
}
