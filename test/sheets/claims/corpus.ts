/** Sentences of fact sheets, and what the check of claims is to say of each. */
export interface Judgement {
  /** In English; the Spanish ones say so. */
  language?: 'es';
  text: string;
  /** The typed numbers that no finding bears out, in their order. */
  typed?: readonly string[];
  /** The words that claim what the trial does not bear out. */
  claims?: string;
  /** The words that claim a sameness, which no trial bears out. */
  same?: string;
  /** Something that the message has to say. */
  says?: string;
}

/**
 * Of autumn-lettuce-2025, which was tested. By hand from harvest.csv: per plant set Cobalt Wren (the check) 131.0 g
 * (111 to 160), Russet Plover 181.9 g (150 to 215), Slate Egret 133.4 g (145.5 g of those harvested, one died). Tank
 * T1 gave 1251 g. Russet Plover is told apart from both others, and those two not from one another.
 */
export const tested: readonly Judgement[] = [
  // Numbers that are findings, however they are written.
  { text: 'Russet Plover gave 182 g a head.' },
  { text: 'Russet Plover gave 181.9 g a head.' },
  { text: 'Russet Plover gave 6.4 oz a head.' },
  { text: 'Russet Plover gave 0.40 lb a head, which is 6.42 ounces.' },
  { text: 'Russet Plover averaged about 180 g, and Cobalt Wren about 130 g.' },
  { text: 'A head of Russet Plover weighed nearly half a pound at best, and 215 grams at the most.' },
  { text: 'Cobalt Wren, Slate Egret and Russet Plover gave 131, 133 and 182 g.' },
  { text: 'Heads of Russet Plover weighed 150–215 g.' },
  { text: 'Heads of Russet Plover weighed 150 to 215 g.' },
  { text: 'Russet Plover gave 51 g more than the check.' },
  { text: 'Russet Plover gave 39% more than the check.' },
  { text: 'Russet Plover yielded 3.0 kg/m2, Cobalt Wren 2.2 kg per square metre.' },
  { text: 'Russet Plover yielded 9.9 oz per square foot.' },
  { text: 'Tank T1 gave 1,251 g in all, which is 2 lb 12 oz.' },
  { text: 'Of Slate Egret, 92% of the plants were harvested.' },
  { text: 'Those of Slate Egret that were harvested weighed 145.5 g, with the dead one counted 133 g.' },
  { text: 'The interval of the difference runs from 10 to 91 g.' },
  { text: 'Over 180 g a head is more than we hoped for from Russet Plover.' },
  { text: 'The heaviest head of Russet Plover weighed 215 g.' },
  // Numbers that are none.
  { text: 'Russet Plover gave 192 g a head.', typed: ['192 g'], says: 'the nearest is' },
  { text: 'Russet Plover gave 7.1 oz a head.', typed: ['7.1 oz'] },
  { text: 'About 170 g is what Russet Plover averaged.', typed: ['170 g'] },
  { text: 'Heads of Russet Plover weighed 140–220 g.', typed: ['140 g', '220 g'] },
  { text: 'Cobalt Wren averaged 182 g.', typed: ['182 g'], says: 'of Russet Plover' },
  { text: 'Russet Plover gave 25% more than the check.', typed: ['25%'] },
  { text: 'Russet Plover yielded 4.1 kg/m2.', typed: ['4.1 kg/m2'] },
  { text: 'Russet Plover yielded 1.4 lb per square foot.', typed: ['1.4 lb per square foot'] },
  { text: 'Tank T1 gave 1,350 g in all.', typed: ['1,350 g'] },
  { text: 'Russet Plover gave 182 g a tray.', typed: ['182 g'] },
  { text: 'Cobalt Wren gave half a kilo a head.', typed: ['half a kilo'] },
  { text: 'Over 200 g a head is what Russet Plover averaged.', typed: ['200 g'] },
  { text: 'Only 70% of the plants of Slate Egret were harvested.', typed: ['70%'] },
  {
    text: '| Cultivar | Weight, g |\n|---|---|\n| Russet Plover | 182 |\n| Cobalt Wren | 141 |',
    typed: ['141 g'],
  },
  // Numbers that are no findings of weight, and not held against them.
  { text: 'Each litre holds 1.0 g of Base 5-11-26 and 0.66 g of calcium nitrate.' },
  { text: 'The solution holds 100 mg/L of nitrogen and 23 g per litre of nothing.' },
  { text: 'For the tank of 50 L, dissolve 33 g in warm water first.' },
  { text: 'Weigh 50 g of the salt, and stir.' },
  { text: 'The scale reads to 1 g.' },
  { text: 'Weights were taken to the nearest 2 g.' },
  { text: 'The pots are 8 oz cups, and the salts came in 5 kg bags.' },
  { text: 'Lettuce fetched 12 euros per 1 kg.' },
  { text: 'The tanks are 117 cm by 57 cm, 12 m from the wall, and were cut on 20 October 2025.' },
  { text: 'Nights fell to 5 C, humidity was 80%, and a shade cloth of 50% hung above.' },
  { text: 'We used the solution at 75% strength for the first week.' },
  { text: 'The 95% interval is wide.' },
  { text: 'We sowed 2 g of seed.' },
  { text: 'The label says <Quoted>heads of 400 g</Quoted>.' },
  { text: '> Heads of 400 g, it outyields them all.' },
  { text: 'It gave <Value of="mean" where="cultivar=slate-egret" /> on average.' },
  { text: 'The law allows 5000 mg of nitrate per kg.' },
  { text: '| Salt | g |\n|---|---|\n| Calcium nitrate | 66 |' },
  // Claims that the trial bears out, or that are none.
  { text: 'Russet Plover outyielded Cobalt Wren.' },
  { text: 'Russet Plover outweighed the check.' },
  { text: 'Russet Plover was significantly heavier than Slate Egret.' },
  { text: 'Russet Plover was the heaviest of the three cultivars.' },
  { text: 'One of the three cultivars was the heaviest.' },
  { text: 'One of the three cultivars was the lightest.', claims: 'lightest' },
  { text: 'Cobalt Wren gave less than Russet Plover.' },
  { text: 'Cobalt Wren was outyielded by Russet Plover.' },
  { text: 'Slate Egret did not outyield the check.' },
  { text: 'Slate Egret was no heavier than Cobalt Wren.' },
  { text: 'No newcomer but one outyielded the check.' },
  { text: 'Does Slate Egret outyield the check?' },
  { text: 'We wondered whether Slate Egret outyields the check.' },
  { text: 'The trial could not tell whether Slate Egret is heavier than Cobalt Wren.' },
  { text: 'Slate Egret may be better than Cobalt Wren in a longer trial.' },
  { text: 'Slate Egret tasted better than Cobalt Wren.' },
  { text: 'Cut leaves early in the day for better keeping.' },
  { text: 'Higher tanks and better light would help the cultivars.' },
  { text: 'The heaviest head of Slate Egret was by the wall.' },
  {
    text: 'Slate Egret gave <Difference a="cultivar=slate-egret" b="cultivar=cobalt-wren" /> than Cobalt Wren.',
  },
  { text: 'The packet says that it is <Quoted>better than any Cobalt Wren</Quoted>.' },
  // Claims that it does not bear out.
  { text: 'Slate Egret outyielded Cobalt Wren.', claims: 'outyielded', says: 'too little for this trial' },
  { text: 'Slate Egret was heavier than the check.', claims: 'heavier' },
  { text: 'Slate Egret did better than Cobalt Wren.', claims: 'better' },
  { text: 'Slate Egret is not only pretty, it outweighs the check.', claims: 'outweighs' },
  { text: 'Cobalt Wren outyielded Russet Plover.', claims: 'outyielded', says: 'the reverse' },
  { text: 'Slate Egret did not bolt, and it outyielded the check.', claims: 'outyielded' },
  { text: 'Slate Egret was the heaviest cultivar.', claims: 'heaviest' },
  { text: 'Grey Egret outyielded Blue Wren.', claims: 'outyielded' },
  { text: 'Both newcomers, Russet Plover and Slate Egret, outyielded the check.', claims: 'outyielded' },
  {
    text: 'Slate Egret was significantly heavier than Cobalt Wren.',
    claims: 'significantly',
    says: 'write "Slate Egret gave 2 g a plant more than Cobalt Wren, too little',
  },
  { text: 'Russet Plover gave half as much again as Cobalt Wren.' },
  { text: 'Russet Plover was heavier.' },
  { text: 'Cobalt Wren was outyielded.' },
  { text: 'Of the two newcomers, Russet Plover was heavier than the check.' },
  { text: 'Slate Egret gave the heaviest head of its row.' },
  { text: 'Slate Egret did better at the edge.' },
  { text: 'Slate Egret was heavier.', claims: 'heavier', says: 'cannot tell from none' },
  { text: 'The yield of Slate Egret was greater.', claims: 'greater' },
  { text: 'Slate Egret gave heavier heads than Cobalt Wren.', claims: 'heavier' },
  { text: 'Yields of Slate Egret exceeded those of Cobalt Wren.', claims: 'exceeded' },
  { text: 'Slate Egret came out on top of Cobalt Wren.', claims: 'came out on top' },
  { text: 'It is no accident that Slate Egret outyielded Cobalt Wren.', claims: 'outyielded' },
  { text: 'Slate Egret did not fail to outyield Cobalt Wren.', claims: 'outyield' },
  { text: 'All three were significantly different.', claims: 'significantly' },
  { text: 'The two newcomers were heavier than the check.', claims: 'heavier' },
  { text: 'A head of Russet Plover came to one hundred and eighty-two grams.' },
  { text: 'Russet Plover yielded thirty-nine percent more than the check.' },
  { text: 'Cobalt Wren gave 28% less than Russet Plover.' },
  {
    text: 'Russet Plover averaged one hundred and ninety-two grams.',
    typed: ['one hundred and ninety-two grams'],
  },
  { text: 'Cobalt Wren gave 39% less than Russet Plover.', typed: ['39%'], says: 'the nearest is 28' },
  { text: 'Russet Plover gave 192 gm a head.', typed: ['192 gm'] },
  // Other ways to write a number, an area and a multiple.
  { text: 'Russet Plover gave １８２ ｇ a head.' },
  { text: 'Russet Plover gave １９２ g a head.', typed: ['192 g'] },
  { text: '| Cultivar | g |\n|---|---|\n| Russet Plover | １９２ |', typed: ['192 g'] },
  { text: '---\nsummary: Russet Plover gave １９２ g a head.\n---\n\nText.', typed: ['192 g'] },
  { text: 'Russet Plover yielded 62 lb per 100 square feet.' },
  { text: 'Russet Plover yielded 62 lb/100 sq ft.' },
  { text: 'Russet Plover yielded 6.2 lb per ten square feet.' },
  { text: 'Russet Plover yielded 5.6 lb per square yard.' },
  {
    text: 'Russet Plover yielded 99 lb per 100 square feet.',
    typed: ['99 lb per 100 square feet'],
    says: '62.1 lb per 100 square feet',
  },
  { text: 'Russet Plover yielded 9.9 lb per square yard.', typed: ['9.9 lb per square yard'], says: '5.59' },
  { text: 'Russet Plover yielded 9.9 lb/yd².', typed: ['9.9 lb/yd²'] },
  { text: 'Russet Plover gave double what Cobalt Wren gave.', typed: ['double what'] },
  { text: 'The yield of Russet Plover was double that of Cobalt Wren.', typed: ['double that of'] },
  { text: 'At full strength Russet Plover had water of an EC twice that of Cobalt Wren.' },
  { text: 'Cobalt Wren weighed half of what Russet Plover did.', typed: ['half of what'] },
  { text: 'Cobalt Wren was half as heavy as Russet Plover.', typed: ['half as heavy'] },
  { text: 'Russet Plover was twice as productive as Cobalt Wren.', typed: ['twice as productive'] },
  { language: 'es', text: 'Russet Plover rindió el doble.', typed: ['rindió el doble'] },
  {
    language: 'es',
    text: 'Russet Plover duplicó el rendimiento de Cobalt Wren.',
    typed: ['duplicó el rendimiento'],
  },
  {
    language: 'es',
    text: 'El rendimiento de Russet Plover fue el doble del de Cobalt Wren.',
    typed: ['el doble del de'],
  },
  {
    language: 'es',
    text: 'Russet Plover rindió 99 libras por cada 100 pies cuadrados.',
    typed: ['99 libras por cada 100 pies cuadrados'],
  },
  { language: 'es', text: 'De Russet Plover pusimos el doble de plantas en cada tanque.' },
  { text: 'Russet Plover gave 1.4x the weight of Cobalt Wren.' },
  { text: 'Russet Plover gave 3x the weight of Cobalt Wren.', typed: ['3x the weight'] },
  { text: 'Russet Plover gave 3× as much as Cobalt Wren.', typed: ['3× as much'] },
  // Ranks, and stronger words.
  { text: 'Russet Plover ranked first in yield.' },
  { text: 'Slate Egret ranked first in yield.', claims: 'ranked first' },
  { text: 'Cobalt Wren came last of the three cultivars.', claims: 'came last' },
  { text: 'Slate Egret came first to flower.' },
  { text: 'Slate Egret smashed Cobalt Wren.', claims: 'smashed' },
  { text: 'Slate Egret had an edge over Cobalt Wren in weight.', claims: 'an edge over' },
  { language: 'es', text: 'Slate Egret fue el primero en rendimiento.', claims: 'fue el primero' },
  { language: 'es', text: 'Slate Egret fue la primera en germinar.' },
  {
    language: 'es',
    text: 'Cobalt Wren quedó en último lugar en rendimiento.',
    claims: 'quedó en último lugar',
  },
  { language: 'es', text: 'Slate Egret quedó por encima de Cobalt Wren.', claims: 'quedó por encima de' },
  // Spanish.
  { language: 'es', text: 'Russet Plover dio ciento ochenta y dos gramos por planta.' },
  { language: 'es', text: 'Russet Plover dio el doble que Cobalt Wren.', typed: ['el doble que'] },
  { language: 'es', text: 'Cobalt Wren rindió un 39 % menos que Russet Plover.', typed: ['39 %'] },
  { language: 'es', text: 'No es casualidad que Slate Egret superó a Cobalt Wren.', claims: 'superó' },
  { language: 'es', text: 'Slate Egret dio cabezas más pesadas que Cobalt Wren.', claims: 'más pesadas' },
  { language: 'es', text: 'Russet Plover dio 182 g por planta y superó a Cobalt Wren.' },
  { language: 'es', text: 'Russet Plover rindió 3,0 kg/m2, unos 180 g por planta.' },
  { language: 'es', text: 'El depósito T1 dio 1.251 g en total.' },
  { language: 'es', text: 'Slate Egret no superó al testigo.' },
  {
    language: 'es',
    text: 'Disolver 33 g de nitrato de calcio en 50 L de agua; con 2,5 g de sal por litro basta.',
  },
  { language: 'es', text: 'El intervalo del 95 % es ancho y la humedad fue del 80 %.' },
  {
    language: 'es',
    text: 'Russet Plover dio 192 g por planta.',
    typed: ['192 g'],
    says: 'the nearest is 185,5 g, the median',
  },
  {
    language: 'es',
    text: 'Russet Plover rindió 4,1 kg por metro cuadrado.',
    typed: ['4,1 kg por metro cuadrado'],
  },
  { language: 'es', text: 'Slate Egret superó a Cobalt Wren.', claims: 'superó', says: 'demasiado poco' },
  { language: 'es', text: 'Slate Egret es mejor que el testigo.', claims: 'mejor' },
];

/** Of autumn-lettuce-2025 again: claims that treatments give the same, and words that look like them. */
export const sameness: readonly Judgement[] = [
  { text: 'Slate Egret is as good as Cobalt Wren.', same: 'as good as', says: 'too little for this trial' },
  { text: 'Slate Egret gave the same weight as Cobalt Wren.', same: 'gave the same weight' },
  { text: 'There was no difference in yield between Slate Egret and the check.', same: 'no difference' },
  { text: 'The weights of Slate Egret and Cobalt Wren were equal.', same: 'equal' },
  { text: 'Slate Egret and Cobalt Wren yielded equally.', same: 'yielded equally' },
  { text: 'Slate Egret matched the check in weight.', same: 'matched' },
  {
    text: 'Russet Plover gave the same yield as Cobalt Wren.',
    same: 'gave the same yield',
    says: 'told them apart',
  },
  { text: 'All three cultivars weighed the same.', same: 'weighed the same', says: 'told them apart' },
  { text: "Slate Egret's yield did not differ from the check.", same: 'did not differ' },
  { text: 'Which cultivar you grow makes no difference to the yield.', same: 'no difference' },
  { text: 'Slate Egret did not yield the same as Russet Plover.' },
  { text: 'Slate Egret gave nearly the same weight as Cobalt Wren.' },
  { text: 'There was no significant difference in weight between Slate Egret and Cobalt Wren.' },
  { text: 'The weights of Slate Egret did not differ significantly from the check.' },
  { text: 'All three cultivars were given the same water and the same care.' },
  { text: 'Slate Egret tasted as good as Cobalt Wren.' },
  { text: 'Is Slate Egret as good as the check?' },
  { text: 'We asked whether Slate Egret yields the same as Cobalt Wren.' },
  { text: 'Slate Egret gave the same weight in both tanks.' },
  { text: 'The three cultivars shared the same tank, and the heads were cut the same day.' },
  { text: '"Not told apart" does not mean that the yields are equal.' },
  { text: 'The heads of Slate Egret as well as those of Cobalt Wren were cut in October.' },
  {
    text: 'We found no difference in weight between Slate Egret and Cobalt Wren that this trial could tell.',
  },
  { text: 'There was no difference in weight that this trial could have seen between the three cultivars.' },
  {
    language: 'es',
    text: 'Ninguna diferencia de peso que este ensayo pudiera ver separó a las tres variedades.',
  },
  { text: 'We sowed equal numbers of each cultivar, and weighed each head.' },
  { text: 'Slate Egret and Russet Plover were sown the same day, so that the harvest fell together.' },
  { text: 'Slate Egret was equal to the check in colour.' },
  { language: 'es', text: 'Slate Egret es tan bueno como Cobalt Wren.', same: 'tan bueno como' },
  { language: 'es', text: 'Slate Egret rindió lo mismo que Cobalt Wren.', same: 'rindió lo mismo' },
  {
    language: 'es',
    text: 'Slate Egret pesó igual que el testigo.',
    same: 'igual que',
    says: 'demasiado poco',
  },
  { language: 'es', text: 'Las tres variedades rindieron sin diferencia.', same: 'sin diferencia' },
  {
    language: 'es',
    text: 'No hubo diferencia de peso entre Slate Egret y Cobalt Wren.',
    same: 'No hubo diferencia',
  },
  { language: 'es', text: 'No hubo diferencias significativas de peso entre Slate Egret y Cobalt Wren.' },
  { language: 'es', text: 'Slate Egret dio casi lo mismo que Cobalt Wren.' },
  { language: 'es', text: 'Slate Egret no pesó lo mismo que Russet Plover.' },
  { language: 'es', text: 'Todas las variedades se cosecharon el mismo día.' },
  { language: 'es', text: 'Al igual que Cobalt Wren, Slate Egret se cosechó en octubre.' },
  { text: 'Heads of Slate Egret and Cobalt Wren look alike.' },
  { text: 'Slate Egret and Cobalt Wren are interchangeable in yield.', same: 'interchangeable' },
  { language: 'es', text: 'Slate Egret es igual de buena que Cobalt Wren.', same: 'igual de buena' },
  {
    language: 'es',
    text: 'No existe diferencia entre Slate Egret y Cobalt Wren en peso.',
    same: 'No existe diferencia',
  },
  {
    language: 'es',
    text: 'Slate Egret no dio ni más ni menos que Cobalt Wren.',
    same: 'no dio ni más ni menos',
  },
];

/**
 * Of four-lettuces-2024, one tank for each cultivar, which tested nothing. Means by hand: Cobalt Wren 148.3 g,
 * Russet Plover 172.1 g, Slate Egret 158.3 g, Umber Dotterel 127.1 g.
 */
export const untested: readonly Judgement[] = [
  { text: 'Russet Plover gave 172 g a head and Umber Dotterel 127 g.' },
  { text: 'Russet Plover gave 24 g a head over what Cobalt Wren gave.' },
  { text: 'This trial cannot say which lettuce is better than another.' },
  { text: 'What one tank did better than another may be chance.' },
  { text: 'Tip burn was worse near the wall.' },
  { text: 'The weather was better than the year before.' },
  { text: 'The row by the wall gave less in every tank.' },
  { text: 'Plants at the edge were heavier.' },
  { text: 'Russet Plover had the better colour.' },
  { text: 'Russet Plover outyielded the check.', claims: 'outyielded', says: 'did not test' },
  { text: 'Russet Plover gave a significantly larger crop.', claims: 'significantly' },
  { text: 'There was a significant difference between the lettuces.', claims: 'significant' },
  { text: 'Russet Plover was the best cultivar.', claims: 'best' },
  { text: 'Umber Dotterel yielded less than the rest.', claims: 'yielded less' },
  { text: 'Russet Plover gave 24 g more than Cobalt Wren.', claims: 'more than' },
  {
    text: 'Slate Egret beat Cobalt Wren.',
    claims: 'beat',
    says: 'write "Slate Egret gave 10 g a plant more than Cobalt Wren here, and whether it would again',
  },
  {
    text: 'Russet Plover is as good as Cobalt Wren.',
    same: 'as good as',
    says: 'did not test; write "Russet Plover gave 24 g a plant more than Cobalt Wren here',
  },
  { text: 'Slate Egret gave 185 g a head.', typed: ['185 g'] },
  {
    language: 'es',
    text: 'Russet Plover rindió más que el testigo.',
    claims: 'rindió más',
    says: 'no puede decir',
  },
  { language: 'es', text: 'Este ensayo no permite distinguir si Russet Plover es mejor.' },
];

/** Of solution-strength-2026: half strength is told apart from full and from one and a half, which are not from one another. */
export const strengths: readonly Judgement[] = [
  { text: 'Full strength outyielded half strength.' },
  { text: 'Full-strength solution was no better than one and a half times the strength.' },
  { text: 'EC was higher in the stronger solution.' },
  { text: 'At half strength we used 50% less salt, and half strength saves 15 g of salt in a tank of 30 L.' },
  { text: 'At half strength we used half as much salt as at full strength.' },
  { text: 'Half strength gave half the weight of full strength.', typed: ['half the weight'] },
  { text: 'Half strength was the heaviest.', claims: 'heaviest', says: 'the reverse' },
  { text: 'Half strength did better than full strength.', claims: 'better', says: 'the reverse' },
  { text: 'The 1.5 strength gave lower yields than full strength.', claims: 'lower yields' },
];

/** Of sweet-basil-2025, cut twice: alike over both cuts, and at the second Fen Linnet gave more. */
export const cutTwice: readonly Judgement[] = [
  { text: 'Gilt Siskin gave 129 g a plant over both cuts.' },
  { text: 'At the second cut Fen Linnet outyielded Gilt Siskin.' },
  { text: 'At the first cut Gilt Siskin gave 88 g a plant, and at the second 41 g.' },
  { text: 'Gilt Siskin gave 88 g at the second cut.', typed: ['88 g'] },
  { text: 'The first cut gave more than the second.' },
  { text: 'Basil that is cut early gives better regrowth.' },
  { text: 'At the second cut Gilt Siskin outyielded Fen Linnet.', claims: 'outyielded', says: 'the reverse' },
  { text: 'Gilt Siskin was the better of the two.', claims: 'better' },
];

/** Of plants-per-pot-2024, whose pots were weighed whole, so that nothing is known of single plants. */
export const potsWhole: readonly Judgement[] = [
  { text: 'Pots with two plants gave more than pots with 1 plant.' },
  { text: 'Each tray held 25 L and 6 pots, and we weighed to 1 g.' },
  { text: 'Three plants a pot gave 138 g a pot.' },
  { text: 'Two plants a pot gave 138 g a pot.', typed: ['138 g'] },
  { text: 'Three plants a pot gave 40 g a plant.', typed: ['40 g'] },
];
