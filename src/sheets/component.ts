import type { Report } from '../check/rule.ts';
import type { BlockComponent, FactSheet, InlineComponent, SheetPlace } from '../model/fact-sheet.ts';
import type { Library, TrialWithFindings } from '../model/library.ts';
import type { Piece } from './piece.ts';

/** An attribute that a component may have. */
export interface ComponentAttribute {
  name: string;
  /** True where it cannot be left out. */
  needed?: boolean;
  /** The only values that it can have; absent where other text may stand. */
  choices?: readonly string[];
  /** The names that its component looks it up among, and reports on itself. */
  lookedUpAmong?: readonly string[];
  /** What each of the choices stands for, where its name does not say it. */
  choiceMeanings?: Readonly<Record<string, string>>;
  /** The form of its value, and that form in words. */
  form?: { pattern: RegExp; words: string };
  /** What it says, for the page of components: a message, said there in the site's language. */
  meaning: string;
}

/** What the examples of a component are made with: a trial of the site that is finished. */
export interface ExampleTrial {
  item: TrialWithFindings;
  /** As `where` names them. */
  treatment: string;
  other: string;
  /** As a reader sees them. */
  name: string;
  otherName: string;
}

/** A component that a fact sheet may have. The check and the page of components both read this. */
export interface SheetComponent {
  name: string;
  /** Within a sentence, on lines of its own, or in either way. */
  stands: 'in a sentence' | 'on its own' | 'either';
  /** Whether text stands between its tags. */
  holds: 'nothing' | 'text' | 'text or nothing';
  /** What it shows, for the page of components: a message, said there in the site's language. */
  meaning: string;
  attributes: readonly ComponentAttribute[];
  /** How it is written, for a trial; null where this trial has nothing of the kind. */
  example(trial: ExampleTrial): string | null;
  /** What it becomes; null where it asks for what there is not, which is then reported. */
  resolve(asked: Asked): readonly Piece[] | null;
}

/** What a sheet is resolved against. */
export interface SheetContext {
  sheet: FactSheet;
  library: Library;
  /** The trial whose sheet it is; null for one across trials. */
  own: TrialWithFindings | null;
  /** The trials that it speaks of: its own, or those that its front matter names. */
  trials: readonly string[];
  /** Trials that are there and have errors of their own, so that nothing can be said of them. */
  faulty: ReadonlySet<string>;
  /** True where one trial's folder is checked by itself, so that no other trial is known. */
  alone: boolean;
  report: Report;
}

/** One component of a sheet, as its resolver sees it. */
export interface Asked extends SheetContext {
  component: InlineComponent | BlockComponent;
  /** True where it stands within a sentence. */
  inline: boolean;
  /** An attribute's value; null where it was left out. */
  attribute(name: string): string | null;
  /** Where an attribute stands, or the component where it was left out. */
  place(name: string): SheetPlace;
}
