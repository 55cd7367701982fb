/** The remark of a place: the common ones by one tap, others in words. */
import { say } from '../../model/say.ts';
import { button, part } from './dom.ts';

export interface RemarkStrip {
  show(remark: string): void;
}

/** Remarks are kept as one text, parted by semicolons. */
const between = '; ';

/** @param onChange is given the remark as it then reads */
export function remarkStrip(onChange: (remark: string) => void): RemarkStrip {
  const [strip, form] = [part('weigh-remarks'), part('weigh-remark-form')];
  const box = part<HTMLInputElement>('weigh-remark');
  let remark = '';

  const common = [
    say('tip burn'),
    say('bolted'),
    say('eaten'),
    say('broken'),
    say('yellow leaves'),
    say('mildew'),
    say('rot'),
    say('small'),
  ].map((text) => button(text, () => toggle(text), { 'aria-pressed': 'false' }));
  strip.replaceChildren(button(say('Other remark'), open, { id: 'weigh-other' }), ...common);
  form.addEventListener('submit', (event) => {
    event.preventDefault();
    form.hidden = true;
    change(box.value.trim());
  });

  function show(now: string): void {
    remark = now;
    const parts = now.split(between);
    for (const each of common) each.setAttribute('aria-pressed', String(parts.includes(each.textContent)));
    part('weigh-remark-now').textContent = now === '' ? '' : say('Remark: {remark}', { remark: now });
  }

  function change(to: string): void {
    show(to);
    onChange(to);
  }

  function toggle(text: string): void {
    const parts = remark.split(between).filter(Boolean);
    change((parts.includes(text) ? parts.filter((each) => each !== text) : [...parts, text]).join(between));
  }

  function open(): void {
    form.hidden = false;
    box.value = remark;
    box.focus();
  }

  return { show };
}
