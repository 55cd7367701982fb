/** The page for planning: reads the fields, draws lots for every arrangement that answers the question, hands out the folder. */
import { levelNames } from '../../compute/format/level-names.ts';
import { drawLayoutMaps } from '../../draw/layout-maps.ts';
import { language } from '../../model/language.ts';
import { say, sayCount } from '../../model/say.ts';
import { factorField, mostFactors, type PlanFields } from '../../plan/plan-fields.ts';
import { betweenProposals, proposalSentences } from '../../plan/proposal-words.ts';
import { type Proposal, proposals } from '../../plan/proposals.ts';
import { type PlanFault, readPlan } from '../../plan/read-plan.ts';
import type { PlanFacts } from '../../publish/plan-facts.ts';
import { zipOfFolder } from '../../weigh/exported-files.ts';
import { today } from '../local-day.ts';
import { escapeHtml } from '../html.ts';
import { keepFile } from '../keep-file.ts';

const part = <Kind extends HTMLElement = HTMLElement>(id: string): Kind =>
  document.getElementById(id) as Kind;

if (language() !== 'en') await import('../../model/messages.ts');
const facts = JSON.parse(part('plan-facts').textContent ?? '') as PlanFacts;
const form = part<HTMLFormElement>('plan-form');
const told = part('told');
const result = part('result');
let made: readonly Proposal[] = [];

function fieldsOf(): PlanFields {
  const data = new FormData(form);
  const text = (name: string) => {
    const value = data.get(name);
    return typeof value === 'string' ? value : '';
  };
  return {
    question: text('question'),
    crop: text('crop'),
    season: text('season'),
    year: text('year'),
    site: text('site'),
    setting: text('setting'),
    person: text('person'),
    factors: Array.from({ length: mostFactors }, (_, index) => ({
      factor: text(factorField('factor', index)),
      levels: text(factorField('levels', index)),
      bound: text(factorField('bound', index)),
    })),
    hasCheck: data.has('hasCheck'),
    containers: text('containers'),
    rows: text('rows'),
    columns: text('columns'),
    grids: text('grids'),
    kind: text('kind'),
    allot: data.getAll('allot').map(String),
    plotRows: text('plotRows'),
    plotColumns: text('plotColumns'),
    border: text('border'),
    seedlings: text('seedlings'),
    sizes: text('sizes'),
    records: data.getAll('records').map(String),
    tasters: text('tasters'),
    variation: text('variation'),
    unreplicated: data.has('unreplicated'),
  };
}

function showFaults(faults: readonly PlanFault[]): void {
  for (const place of form.querySelectorAll<HTMLElement>('[data-fault]')) {
    const fault = faults.find(({ field }) => field === place.dataset['fault']);
    place.textContent = fault?.message ?? '';
    for (const input of form.querySelectorAll(`[name="${place.dataset['fault'] ?? ''}"]`)) {
      if (fault) input.setAttribute('aria-invalid', 'true');
      else input.removeAttribute('aria-invalid');
    }
  }
  const [first] = faults;
  if (first) form.querySelector<HTMLElement>(`[name="${first.field}"]`)?.focus();
}

function plan(): void {
  const read = readPlan(fieldsOf(), facts);
  if (!('request' in read)) {
    showFaults(read);
    told.textContent = say('Some fields are not understood yet.');
    result.hidden = true;
    return;
  }
  showFaults([]);
  const typed = part<HTMLInputElement>('seed').value.trim();
  const seed = /^\d{1,10}$/.test(typed) ? Number(typed) : crypto.getRandomValues(new Uint32Array(1))[0]!;
  part<HTMLInputElement>('seed').value = String(seed);
  const { request } = read;
  const known = facts.crops.find(({ crop }) => crop.name === request.crop.name);
  const variation = read.variation ?? known?.variation ?? facts.otherwise;
  const context = { cultivars: facts.cultivars, others: [], today: today(), variation };
  const found = proposals(request, seed, context);
  made = found.proposals;
  part('between').textContent = betweenProposals(made, read.variation !== null) ?? '';
  show(found);
}

function show({ refusals, problems }: ReturnType<typeof proposals>): void {
  const list = made.map((proposal, index) => {
    const { heading, sentences } = proposalSentences(proposal, facts.cultivars);
    const lines = sentences.map((sentence) => `<li>${escapeHtml(sentence)}</li>`).join('');
    return (
      `<div class="proposal"><input type="radio" name="proposal" id="proposal-${String(index)}" value="${String(index)}"${index === 0 ? ' checked' : ''}>` +
      `<label for="proposal-${String(index)}">${escapeHtml(heading)}</label><ul>${lines}</ul></div>`
    );
  });
  const no = [
    ...refusals.map(({ reason }) => say('No: {reason}.', { reason })),
    ...problems.map(({ message }) => message),
  ];
  part('proposals').innerHTML = list.join('');
  part('refusals').innerHTML = no.map((sentence) => `<li>${escapeHtml(sentence)}</li>`).join('');
  part('taking').hidden = made.length === 0;
  told.textContent =
    made.length === 0
      ? say('Nothing can be proposed that answers the question; the reasons stand below.')
      : sayCount(made.length, '{count} way to lay it out.', '{count} ways to lay it out, the best first.');
  result.hidden = false;
  draw();
}

/** The proposal that is chosen. */
function chosen(): Proposal | undefined {
  const radio = result.querySelector<HTMLInputElement>('input[name="proposal"]:checked');
  return made[Number(radio?.value ?? 0)];
}

function draw(): void {
  const proposal = chosen();
  const figures = proposal
    ? drawLayoutMaps(proposal.trial, { names: levelNames(proposal.trial, facts.cultivars) })
    : [];
  part('maps').innerHTML = figures
    .map(
      ({ svg, title }) =>
        `<figure>${svg}<figcaption><strong>${escapeHtml(title)}.</strong></figcaption></figure>`,
    )
    .join('');
}

function take(): void {
  const proposal = chosen();
  if (!proposal) return;
  const encoder = new TextEncoder();
  const files = new Map([...proposal.files].map(([name, text]) => [name, encoder.encode(text)]));
  const zip = zipOfFolder(proposal.trial.id, files, today());
  const content = new Blob([zip as Uint8Array<ArrayBuffer>], { type: 'application/zip' });
  keepFile(`${proposal.trial.id}.zip`, content);
}

form.addEventListener('submit', (event) => {
  event.preventDefault();
  plan();
});
part('again').addEventListener('click', () => {
  part<HTMLInputElement>('seed').value = '';
  plan();
});
part('take').addEventListener('click', take);
part('another').addEventListener('click', () => {
  const more = [...form.querySelectorAll<HTMLElement>('fieldset[id^="factor-"][hidden]')];
  part('another').hidden = more.length <= 1;
  more[0]!.hidden = false;
  more[0]!.querySelector('input')!.focus();
});
result.addEventListener('change', draw);
form.hidden = false;
