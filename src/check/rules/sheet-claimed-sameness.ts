import type { Rule } from '../rule.ts';

const rule: Rule = {
  rule: 'sheet-claimed-sameness',
  severity: 'warning',
  acceptable: false,
  title: 'Sameness claimed that the trial does not show',
  meaning:
    'Words such as "as good as", "the same weight" or "no difference" claim that treatments give the same. A trial that cannot tell two apart has not shown that: the difference may be anything within its interval, and only a test made for the purpose could show that it is small. A claim that is softened ("nearly the same"), taken back, asked, quoted, or made of what was not weighed (taste, looks) is left alone.',
  example:
    '"as good as" claims that they give the same, which not telling them apart does not show; write "Slate Egret gave 2 g a plant more than Cobalt Wren, too little for this trial to tell the two apart."',
};
export default rule;
