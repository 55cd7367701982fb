import { collector } from '../check/collect.ts';
import { didYouMean } from '../check/nearest.ts';
import sheetMisplaced from '../check/rules/sheet-misplaced.ts';
import sheetUnknownComponent from '../check/rules/sheet-unknown-component.ts';
import { showText } from '../check/show-value.ts';
import type { BlockComponent, InlineComponent, SheetBlock, SheetInline } from '../model/fact-sheet.ts';
import type { Problem } from '../model/problem.ts';
import { say } from '../model/say.ts';
import { checkAttributes } from './check-attributes.ts';
import { checkLink, checkPlaces } from './check-links.ts';
import type { Asked, SheetComponent, SheetContext } from './component.ts';
import { componentNamed, sheetComponents } from './components.ts';
import { linksOf } from './links-of.ts';
import type { Piece } from './piece.ts';

type Component = InlineComponent | BlockComponent;

/** What each component of a sheet became. One that is at fault is not among them; its problem is. */
export interface ResolvedSheet {
  pieces: ReadonlyMap<Component, readonly Piece[]>;
  problems: readonly Problem[];
}

/** Where a component stands: within a sentence, on its own at the top level, or within something else. */
type Standing = 'sentence' | 'top' | 'within';

/** Checks every component of a sheet and fills it in from the findings. */
export function resolveSheet(context: Omit<SheetContext, 'report'>): ResolvedSheet {
  const { report, problems } = collector('');
  const pieces = new Map<Component, readonly Piece[]>();
  const whole: SheetContext = { ...context, report };
  const one = (component: Component, standing: Standing): void => {
    const made = resolveOne(component, standing, whole);
    if (made !== null) pieces.set(component, made);
  };
  const inlines = (nodes: readonly SheetInline[]): void => {
    for (const node of nodes) {
      if (node.kind === 'component') one(node, 'sentence');
      if (node.kind === 'link') checkLink(node, whole);
      if ('children' in node) inlines(node.children);
    }
  };
  const blocks = (nodes: readonly SheetBlock[], standing: Standing): void => {
    for (const node of nodes) {
      if (node.kind === 'component') {
        one(node, standing);
        blocks(node.children, 'within');
      } else if (node.kind === 'list') for (const item of node.items) blocks(item.children, 'within');
      else if (node.kind === 'quote') blocks(node.children, 'within');
      else if (node.kind === 'table')
        for (const cell of [node.head, ...node.rows].flat()) inlines(cell.children);
      else if (node.kind === 'paragraph' || node.kind === 'heading') inlines(node.children);
    }
  };
  blocks(context.sheet.blocks, 'top');
  const figures = [...pieces.values()]
    .flat()
    .flatMap((piece) => (piece.kind === 'figures' ? piece.figures : []));
  checkPlaces(
    linksOf(context.sheet.blocks),
    figures.map(({ id }) => id),
    whole,
  );
  return { pieces, problems };
}

function resolveOne(
  component: Component,
  standing: Standing,
  context: SheetContext,
): readonly Piece[] | null {
  const { report, sheet } = context;
  const spec = componentNamed(component.name);
  if (spec === null) {
    const names = sheetComponents.map(({ name }) => name);
    const meant = didYouMean(component.name, names);
    const fault = say('there is no component {name}', { name: showText(component.name) });
    const message = fault + (meant === '' ? say('; there is {names}', { names: names.join(', ') }) : meant);
    report(sheetUnknownComponent, { file: sheet.file, place: component, found: component.name, message });
    return null;
  }
  const fault = misplaced(component, standing, spec);
  if (fault !== null)
    report(sheetMisplaced, { file: sheet.file, place: component, found: component.name, message: fault });
  const sound = checkAttributes(component, spec, sheet.file, report);
  return fault === null && sound ? spec.resolve(askedOf(component, standing, context)) : null;
}

function misplaced(
  { children, name }: Component,
  standing: Standing,
  { stands, holds }: SheetComponent,
): string | null {
  const values = { component: name };
  if (stands === 'on its own' && standing === 'sentence')
    return say('{component} stands on lines of its own, with an empty line before and after it', values);
  if (stands === 'on its own' && standing === 'within')
    return say(
      '{component} does not stand within a list, a quotation or another component; set it on lines of its own below',
      values,
    );
  if (holds === 'nothing' && children.length > 0)
    return say('{component} holds no text; end its tag with /> and put the text beside it', values);
  if (holds === 'text' && children.length === 0)
    return say('{component} is empty; write <{component}>the words</{component}>', values);
  return null;
}

function askedOf(component: Component, standing: Standing, context: SheetContext): Asked {
  const given = (name: string) => component.attributes.find((each) => each.name === name);
  return {
    ...context,
    component,
    inline: standing === 'sentence',
    attribute: (name) => given(name)?.value ?? null,
    place: (name) => given(name) ?? component,
  };
}
