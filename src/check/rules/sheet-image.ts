import { say } from '../../model/say.ts';
import type { SheetFault } from '../../read/sheet-fault.ts';
import type { Report, Rule } from '../rule.ts';
import { showText } from '../show-value.ts';

const rule: Rule = {
  rule: 'sheet-image',
  severity: 'error',
  acceptable: false,
  title: 'Picture that is no photograph of the trial',
  meaning:
    'A picture from elsewhere could go, change or tell who reads the page. A fact sheet shows photographs of its trial, which lie in its folder and are listed in trial.yaml with a description.',
  example:
    'a picture is shown with the component Photo, such as <Photo file="photos/day-30.jpg" />, once it is listed under photos in trial.yaml',
};
export default rule;

export function reportSheetImage(report: Report, file: string, { place, found }: SheetFault): void {
  const message =
    found === ''
      ? say(
          'a picture is not shown this way; list it under photos in trial.yaml and write <Photo file="photos/name.jpg" />',
        )
      : say(
          'the picture {name} is not shown this way; list it under photos in trial.yaml and write <Photo file="photos/name.jpg" />',
          { name: showText(found) },
        );
  report(rule, { file, place, found, message });
}
