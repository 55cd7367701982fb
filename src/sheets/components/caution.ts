import { showText } from '../../check/show-value.ts';
import { allCautions } from '../../compute/cautions/cautions-of.ts';
import { say } from '../../model/say.ts';
import type { SheetComponent } from '../component.ts';
import { refuseForm, refuseMissing, refuseName } from '../refuse.ts';

export const caution: SheetComponent = {
  name: 'Caution',
  stands: 'on its own',
  holds: 'text or nothing',
  meaning: 'A caution: one of the reviewed list by its name, or the author’s own words between the tags.',
  attributes: [
    {
      name: 'about',
      lookedUpAmong: allCautions.map(({ id }) => id),
      meaning: 'A caution of the reviewed list, by its name.',
    },
  ],
  example: () => `<Caution about="${allCautions[0]!.id}" />`,
  resolve(asked) {
    const about = asked.attribute('about');
    const own = asked.component.children.length > 0;
    if (about === null && own) return [{ kind: 'caution' }];
    if (about === null)
      return refuseMissing(
        asked,
        'about',
        say('Caution needs the attribute about, or words between <Caution> and </Caution>'),
      );
    if (own) return refuseForm(asked, 'about', say('Caution has both about and words of its own; keep one'));
    const found = allCautions.find(({ id }) => id === about);
    if (found === undefined)
      return refuseName(
        asked,
        'about',
        say('the list of cautions has no {name}', { name: showText(about) }),
        about,
        allCautions.map(({ id }) => id),
      );
    return [{ kind: 'cautions', cautions: [found] }];
  },
};
