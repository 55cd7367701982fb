import type { Rule } from './rule.ts';
import acceptedInVain from './rules/accepted-in-vain.ts';
import blankCell from './rules/blank-cell.ts';
import blankHeading from './rules/blank-heading.ts';
import duplicateColumn from './rules/duplicate-column.ts';
import duplicateId from './rules/duplicate-id.ts';
import emptyFile from './rules/empty-file.ts';
import layoutAndContainerDiffer from './rules/layout-and-container-differ.ts';
import missingColumn from './rules/missing-column.ts';
import missingFile from './rules/missing-file.ts';
import missingKey from './rules/missing-key.ts';
import missingLayout from './rules/missing-layout.ts';
import noRows from './rules/no-rows.ts';
import noWeightNoStatus from './rules/no-weight-no-status.ts';
import notAMapping from './rules/not-a-mapping.ts';
import notATrial from './rules/not-a-trial.ts';
import notAWholeNumber from './rules/not-a-whole-number.ts';
import notUtf8 from './rules/not-utf8.ts';
import nulByte from './rules/nul-byte.ts';
import plantBeyondSet from './rules/plant-beyond-set.ts';
import positionNotPlanted from './rules/position-not-planted.ts';
import positionOffTheGrid from './rules/position-off-the-grid.ts';
import positionTwice from './rules/position-twice.ts';
import raggedRow from './rules/ragged-row.ts';
import unknownColumn from './rules/unknown-column.ts';
import unknownContainer from './rules/unknown-container.ts';
import unknownCut from './rules/unknown-cut.ts';
import unknownKey from './rules/unknown-key.ts';
import unknownLevel from './rules/unknown-level.ts';
import unknownLicence from './rules/unknown-licence.ts';
import unknownStatus from './rules/unknown-status.ts';
import unpairedQuote from './rules/unpaired-quote.ts';
import valueNotANumber from './rules/value-not-a-number.ts';
import weightBesideStatus from './rules/weight-beside-status.ts';
import weightNotANumber from './rules/weight-not-a-number.ts';
import wrongChoice from './rules/wrong-choice.ts';
import wrongDateInRow from './rules/wrong-date-in-row.ts';
import wrongDate from './rules/wrong-date.ts';
import wrongDelimiter from './rules/wrong-delimiter.ts';
import wrongForm from './rules/wrong-form.ts';
import wrongType from './rules/wrong-type.ts';
import yamlAliases from './rules/yaml-aliases.ts';
import yamlDuplicateKey from './rules/yaml-duplicate-key.ts';
import yamlSyntax from './rules/yaml-syntax.ts';
import yamlTab from './rules/yaml-tab.ts';
import zeroWithoutStatus from './rules/zero-without-status.ts';

/** Every rule of the check, by name. */
export const rules: readonly Rule[] = [
  acceptedInVain,
  blankCell,
  blankHeading,
  duplicateColumn,
  duplicateId,
  emptyFile,
  layoutAndContainerDiffer,
  missingColumn,
  missingFile,
  missingKey,
  missingLayout,
  noRows,
  noWeightNoStatus,
  notAMapping,
  notATrial,
  notAWholeNumber,
  notUtf8,
  nulByte,
  plantBeyondSet,
  positionNotPlanted,
  positionOffTheGrid,
  positionTwice,
  raggedRow,
  unknownColumn,
  unknownContainer,
  unknownCut,
  unknownKey,
  unknownLevel,
  unknownLicence,
  unknownStatus,
  unpairedQuote,
  valueNotANumber,
  weightBesideStatus,
  weightNotANumber,
  wrongChoice,
  wrongDateInRow,
  wrongDate,
  wrongDelimiter,
  wrongForm,
  wrongType,
  yamlAliases,
  yamlDuplicateKey,
  yamlSyntax,
  yamlTab,
  zeroWithoutStatus,
];

const byName = new Map<string, Rule>();

/** The rule of a name, or null. */
export function ruleNamed(name: string): Rule | null {
  if (byName.size === 0) for (const rule of rules) byName.set(rule.rule, rule);
  return byName.get(name) ?? null;
}

/** Names of the rules that `accepted` may let stand. */
export function acceptableRules(): string[] {
  return rules.filter(({ acceptable }) => acceptable).map(({ rule }) => rule);
}
