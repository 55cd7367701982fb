import type { Rule } from './rule.ts';
import acceptedInVain from './rules/accepted-in-vain.ts';
import allottedContradicted from './rules/allotted-contradicted.ts';
import arrangementContradicted from './rules/arrangement-contradicted.ts';
import blankCell from './rules/blank-cell.ts';
import blankHeading from './rules/blank-heading.ts';
import blankText from './rules/blank-text.ts';
import blocksAgainstArrangement from './rules/blocks-against-arrangement.ts';
import chargesOutOfBalance from './rules/charges-out-of-balance.ts';
import checkNotALevel from './rules/check-not-a-level.ts';
import columnMoved from './rules/column-moved.ts';
import containerTotal from './rules/container-total.ts';
import containerTreatment from './rules/container-treatment.ts';
import copiedWeights from './rules/copied-weights.ts';
import countNotWhole from './rules/count-not-whole.ts';
import cultivarAlike from './rules/cultivar-alike.ts';
import cultivarNamedDifferently from './rules/cultivar-named-differently.ts';
import dateFarFromCut from './rules/date-far-from-cut.ts';
import dateInTheFuture from './rules/date-in-the-future.ts';
import dateOrder from './rules/date-order.ts';
import dateOutsideTheTrial from './rules/date-outside-the-trial.ts';
import doubtfulLabel from './rules/doubtful-label.ts';
import duplicateColumn from './rules/duplicate-column.ts';
import duplicateId from './rules/duplicate-id.ts';
import ecAgainstRecipe from './rules/ec-against-recipe.ts';
import emailInText from './rules/email-in-text.ts';
import emptyFile from './rules/empty-file.ts';
import eventOutsideTheTrial from './rules/event-outside-the-trial.ts';
import eventPlace from './rules/event-place.ts';
import exchangedHeadings from './rules/exchanged-headings.ts';
import formulaInText from './rules/formula-in-text.ts';
import frozenVersionAltered from './rules/frozen-version-altered.ts';
import frozenVersionMisnamed from './rules/frozen-version-misnamed.ts';
import frozenWithoutSums from './rules/frozen-without-sums.ts';
import gatherAddress from './rules/gather-address.ts';
import gatheredAltered from './rules/gathered-altered.ts';
import gatheredCultivarAlike from './rules/gathered-cultivar-alike.ts';
import gatheredFailsCheck from './rules/gathered-fails-check.ts';
import gatheredRecord from './rules/gathered-record.ts';
import gatheredTwice from './rules/gathered-twice.ts';
import harvestMapping from './rules/harvest-mapping.ts';
import identicalRun from './rules/identical-run.ts';
import layoutAndContainerDiffer from './rules/layout-and-container-differ.ts';
import levelRise from './rules/level-rise.ts';
import levelWithoutPosition from './rules/level-without-position.ts';
import malformedFormula from './rules/malformed-formula.ts';
import markOffItsScale from './rules/mark-off-its-scale.ts';
import lotContradicted from './rules/lot-contradicted.ts';
import measuredWithoutUnit from './rules/measured-without-unit.ts';
import misnamedFile from './rules/misnamed-file.ts';
import missingColumn from './rules/missing-column.ts';
import missingFile from './rules/missing-file.ts';
import missingKey from './rules/missing-key.ts';
import missingLayout from './rules/missing-layout.ts';
import missingRow from './rules/missing-row.ts';
import noHeadings from './rules/no-headings.ts';
import noRegrowthAtFirstCut from './rules/no-regrowth-at-first-cut.ts';
import noRows from './rules/no-rows.ts';
import noWeightNoStatus from './rules/no-weight-no-status.ts';
import notAMapping from './rules/not-a-mapping.ts';
import notATrial from './rules/not-a-trial.ts';
import notAWholeNumber from './rules/not-a-whole-number.ts';
import notUtf8 from './rules/not-utf8.ts';
import nulByte from './rules/nul-byte.ts';
import offTheScale from './rules/off-the-scale.ts';
import outsideTheRange from './rules/outside-the-range.ts';
import photoFile from './rules/photo-file.ts';
import plainAlternation from './rules/plain-alternation.ts';
import plantBeyondSet from './rules/plant-beyond-set.ts';
import plantTwice from './rules/plant-twice.ts';
import plantsPerPot from './rules/plants-per-pot.ts';
import plotInTwo from './rules/plot-in-two.ts';
import plotMissing from './rules/plot-missing.ts';
import plotNotOne from './rules/plot-not-one.ts';
import positionLeftOut from './rules/position-left-out.ts';
import positionNotPlanted from './rules/position-not-planted.ts';
import positionOffTheGrid from './rules/position-off-the-grid.ts';
import positionTwice from './rules/position-twice.ts';
import potTotal from './rules/pot-total.ts';
import preciseLocation from './rules/precise-location.ts';
import raggedRow from './rules/ragged-row.ts';
import randomisedContradicted from './rules/randomised-contradicted.ts';
import readingApart from './rules/reading-apart.ts';
import readingTwice from './rules/reading-twice.ts';
import readingUnlikely from './rules/reading-unlikely.ts';
import relatedLink from './rules/related-link.ts';
import releaseBeforeCut from './rules/release-before-cut.ts';
import reservedId from './rules/reserved-id.ts';
import roundedByHand from './rules/rounded-by-hand.ts';
import rowsOfOneTreatment from './rules/rows-of-one-treatment.ts';
import saltTwice from './rules/salt-twice.ts';
import saltWithoutAnalysis from './rules/salt-without-analysis.ts';
import sameTitleAndSeason from './rules/same-title-and-season.ts';
import seasonYear from './rules/season-year.ts';
import secondFile from './rules/second-file.ts';
import sheetClaimedDifference from './rules/sheet-claimed-difference.ts';
import sheetClaimedSameness from './rules/sheet-claimed-sameness.ts';
import sheetEventAttribute from './rules/sheet-event-attribute.ts';
import sheetExpression from './rules/sheet-expression.ts';
import sheetExpressionAttribute from './rules/sheet-expression-attribute.ts';
import sheetFileName from './rules/sheet-file-name.ts';
import sheetImage from './rules/sheet-image.ts';
import sheetImport from './rules/sheet-import.ts';
import sheetLink from './rules/sheet-link.ts';
import sheetLongSentence from './rules/sheet-long-sentence.ts';
import sheetMisplaced from './rules/sheet-misplaced.ts';
import sheetMissingAttribute from './rules/sheet-missing-attribute.ts';
import sheetNoValue from './rules/sheet-no-value.ts';
import sheetRawHtml from './rules/sheet-raw-html.ts';
import sheetReadingGrade from './rules/sheet-reading-grade.ts';
import sheetSpreadAttribute from './rules/sheet-spread-attribute.ts';
import sheetSyntax from './rules/sheet-syntax.ts';
import sheetTooLarge from './rules/sheet-too-large.ts';
import sheetTypedNumber from './rules/sheet-typed-number.ts';
import sheetUnseenCharacter from './rules/sheet-unseen-character.ts';
import sheetUnknownAttribute from './rules/sheet-unknown-attribute.ts';
import sheetUnknownComponent from './rules/sheet-unknown-component.ts';
import sheetUnknownName from './rules/sheet-unknown-name.ts';
import sheetWrongAttribute from './rules/sheet-wrong-attribute.ts';
import siteAddress from './rules/site-address.ts';
import sourceAltered from './rules/source-altered.ts';
import sourceMissing from './rules/source-missing.ts';
import speciesAgainstCultivar from './rules/species-against-cultivar.ts';
import spreadsheetError from './rules/spreadsheet-error.ts';
import statusAgainstTime from './rules/status-against-time.ts';
import stockBeyondSolubility from './rules/stock-beyond-solubility.ts';
import stockThatSettles from './rules/stock-that-settles.ts';
import textCutOff from './rules/text-cut-off.ts';
import tooManyPlants from './rules/too-many-plants.ts';
import tooManyPositions from './rules/too-many-positions.ts';
import totalWithoutResolution from './rules/total-without-resolution.ts';
import trialId from './rules/trial-id.ts';
import trialOfYears from './rules/trial-of-years.ts';
import trialsNotAFolder from './rules/trials-not-a-folder.ts';
import turnedTable from './rules/turned-table.ts';
import unitMixedUp from './rules/unit-mixed-up.ts';
import unitOfAVariable from './rules/unit-of-a-variable.ts';
import unknownColumn from './rules/unknown-column.ts';
import unknownContainer from './rules/unknown-container.ts';
import unknownCountry from './rules/unknown-country.ts';
import unknownCultivar from './rules/unknown-cultivar.ts';
import unknownCut from './rules/unknown-cut.ts';
import unknownKey from './rules/unknown-key.ts';
import unknownLevel from './rules/unknown-level.ts';
import unknownLicence from './rules/unknown-licence.ts';
import unknownNutrient from './rules/unknown-nutrient.ts';
import unknownStatus from './rules/unknown-status.ts';
import unknownUnit from './rules/unknown-unit.ts';
import unlikelySize from './rules/unlikely-size.ts';
import unlikelySpread from './rules/unlikely-spread.ts';
import unlikelyYield from './rules/unlikely-yield.ts';
import unpairedQuote from './rules/unpaired-quote.ts';
import unpublishedHarvest from './rules/unpublished-harvest.ts';
import unreadArchive from './rules/unread-archive.ts';
import unreadFile from './rules/unread-file.ts';
import unreleasedChanges from './rules/unreleased-changes.ts';
import valueNotANumber from './rules/value-not-a-number.ts';
import versionNotNewest from './rules/version-not-newest.ts';
import weightBesideStatus from './rules/weight-beside-status.ts';
import weightNotANumber from './rules/weight-not-a-number.ts';
import wrongChoice from './rules/wrong-choice.ts';
import writtenOnce from './rules/written-once.ts';
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
  allottedContradicted,
  arrangementContradicted,
  blankCell,
  blankHeading,
  blankText,
  blocksAgainstArrangement,
  chargesOutOfBalance,
  checkNotALevel,
  columnMoved,
  containerTotal,
  containerTreatment,
  copiedWeights,
  countNotWhole,
  cultivarAlike,
  cultivarNamedDifferently,
  dateFarFromCut,
  dateInTheFuture,
  dateOrder,
  dateOutsideTheTrial,
  doubtfulLabel,
  duplicateColumn,
  duplicateId,
  ecAgainstRecipe,
  emailInText,
  emptyFile,
  eventOutsideTheTrial,
  eventPlace,
  exchangedHeadings,
  formulaInText,
  frozenVersionAltered,
  frozenVersionMisnamed,
  frozenWithoutSums,
  gatherAddress,
  gatheredAltered,
  gatheredCultivarAlike,
  gatheredFailsCheck,
  gatheredRecord,
  gatheredTwice,
  harvestMapping,
  identicalRun,
  layoutAndContainerDiffer,
  levelRise,
  levelWithoutPosition,
  malformedFormula,
  markOffItsScale,
  lotContradicted,
  measuredWithoutUnit,
  misnamedFile,
  missingColumn,
  missingFile,
  missingKey,
  missingLayout,
  missingRow,
  noHeadings,
  noRegrowthAtFirstCut,
  noRows,
  noWeightNoStatus,
  notAMapping,
  notATrial,
  notAWholeNumber,
  notUtf8,
  nulByte,
  offTheScale,
  outsideTheRange,
  photoFile,
  plainAlternation,
  plantBeyondSet,
  plantTwice,
  plantsPerPot,
  plotInTwo,
  plotMissing,
  plotNotOne,
  positionLeftOut,
  positionNotPlanted,
  positionOffTheGrid,
  positionTwice,
  potTotal,
  preciseLocation,
  raggedRow,
  randomisedContradicted,
  readingApart,
  readingTwice,
  readingUnlikely,
  relatedLink,
  releaseBeforeCut,
  reservedId,
  roundedByHand,
  rowsOfOneTreatment,
  saltTwice,
  saltWithoutAnalysis,
  sameTitleAndSeason,
  seasonYear,
  secondFile,
  sheetClaimedDifference,
  sheetClaimedSameness,
  sheetEventAttribute,
  sheetExpression,
  sheetExpressionAttribute,
  sheetFileName,
  sheetImage,
  sheetImport,
  sheetLink,
  sheetLongSentence,
  sheetMisplaced,
  sheetMissingAttribute,
  sheetNoValue,
  sheetRawHtml,
  sheetReadingGrade,
  sheetSpreadAttribute,
  sheetSyntax,
  sheetTooLarge,
  sheetTypedNumber,
  sheetUnseenCharacter,
  sheetUnknownAttribute,
  sheetUnknownComponent,
  sheetUnknownName,
  sheetWrongAttribute,
  siteAddress,
  sourceAltered,
  sourceMissing,
  speciesAgainstCultivar,
  spreadsheetError,
  statusAgainstTime,
  stockBeyondSolubility,
  stockThatSettles,
  textCutOff,
  tooManyPlants,
  tooManyPositions,
  totalWithoutResolution,
  trialId,
  trialOfYears,
  trialsNotAFolder,
  turnedTable,
  unitMixedUp,
  unitOfAVariable,
  unknownColumn,
  unknownContainer,
  unknownCountry,
  unknownCultivar,
  unknownCut,
  unknownKey,
  unknownLevel,
  unknownLicence,
  unknownNutrient,
  unknownStatus,
  unknownUnit,
  unlikelySize,
  unlikelySpread,
  unlikelyYield,
  unpairedQuote,
  unpublishedHarvest,
  unreadArchive,
  unreadFile,
  unreleasedChanges,
  valueNotANumber,
  versionNotNewest,
  weightBesideStatus,
  weightNotANumber,
  wrongChoice,
  writtenOnce,
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
