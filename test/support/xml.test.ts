import { describe, expect, it } from 'vitest';
import { parseXml, withClass } from './xml.ts';

describe('parseXml', () => {
  it('reads elements, attributes and text', () => {
    const root = parseXml('<svg class="a b"><text x="1">5 &lt; 6</text><g/></svg>');
    expect(root.text).toBe('5 < 6');
    expect(root.children.map(({ name }) => name)).toEqual(['text', 'g']);
    expect(withClass(root, 'b')).toEqual([root]);
  });

  it.each([
    ['<svg><g></svg></g>'],
    ['<svg>'],
    ['<svg a="1" a="2"/>'],
    ['<svg>a & b</svg>'],
    ['<svg>&nbsp;</svg>'],
    ['<svg a="<"/>'],
    ['<svg a=1/>'],
    ['<svg/><svg/>'],
    ['<svg>\u0000</svg>'],
    ['<svg><script>a < b</script></svg>'],
  ])('refuses %j', (source) => {
    expect(() => parseXml(source)).toThrow();
  });
});
