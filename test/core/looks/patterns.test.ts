// test/core/looks/patterns.test.ts: each pattern held against a published standard or handbook, named beside it.
import { expect } from 'vitest'
import { readGenotype } from '../../../core/genotype.ts'
import { express } from '../../../core/looks/express.ts'
import type { Look } from '../../../core/looks/look.ts'
import type { Sex } from '../../../core/vocabulary.ts'
import { published } from '../../published.ts'

type Row = {
  readonly claim: string
  readonly ref: string
  readonly told: Readonly<Record<Sex, string>>
  readonly M: { readonly pattern: Look['plumage']['pattern']; readonly says: RegExp }
  readonly F: { readonly pattern: Look['plumage']['pattern']; readonly says: RegExp }
}

/** One genotype for both sexes, hens with one allele at the loci of the Z. */
const pair = (autosomes: string, z = 's+'): Row['told'] => ({
  M: `${autosomes} ${z}/${z}`.trim(),
  F: `${autosomes} ${z}/-`.trim(),
})
const alike = (pattern: Look['plumage']['pattern'], says: RegExp) => ({ pattern, says })

const rows: readonly Row[] = [
  {
    claim:
      'silver laced: hackle and saddle striped, breast white laced with black; the hen laced on breast, back and thighs',
    ref: 'The Laced Wyandotte Club, Silver Laced, colour standard',
    told: pair('e^b/e^b Pg/Pg Ml/Ml Co/Co', 'S'),
    M: alike('single laced', /^silver, hackle and saddle striped and breast laced with black$/),
    F: alike('single laced', /^silver, each feather laced with black$/),
  },
  {
    claim:
      'double laced: the cock has a black breast and black-striped red-brown hackle, the hen two rings on each feather',
    ref: 'Frieslandshow, colour description 58, dubbelgezoomd',
    told: pair('e^b/e^b Pg/Pg Ml/Ml Mh/Mh'),
    M: alike('black-breasted', /red hackle and back, striped with black, black breast/),
    F: alike('double laced', /double laced with black/),
  },
  {
    claim: 'double laced blue: blue in place of black in both sexes, the hen on a chestnut to mahogany ground',
    ref: 'Indian Game Club, Double Laced Blue, standard',
    told: pair('e^Wh/e^Wh Pg/Pg Ml/Ml Mh/Mh Bl/bl+'),
    M: alike('black-breasted', /striped with blue, blue breast and tail/),
    F: alike('double laced', /^deep red, each feather double laced with blue$/),
  },
  {
    claim:
      'partridge pencilled: the cock black on breast and thighs, the hen gold-brown with several rings on each feather',
    ref: 'Sonderverein Zwerg-Plymouth-Rocks, rebhuhnfarbig-gebändert',
    told: pair('e^b/e^b Pg/Pg'),
    M: alike('black-breasted', /^gold hackle and back, black breast and tail$/),
    F: alike('pencilled', /^gold finely pencilled with black$/),
  },
  {
    claim: 'light: white with a black-striped hackle and a black tail, cock and hen alike',
    ref: 'mein-rassegefluegel.de, Sussex weiß-schwarzcolumbia',
    told: pair('e^Wh/e^Wh Co/Co', 'S'),
    M: alike('columbian', /^white with black in hackle and tail/),
    F: alike('columbian', /^white with black in hackle and tail/),
  },
  {
    claim:
      'brown: the cock orange in hackle and saddle with a black breast, the hen finely marked above with a salmon breast',
    ref: 'leghorn.nl, Brown (patrijs)',
    told: pair('e+/e+'),
    M: alike('black-breasted', /^gold hackle and back, black breast and tail$/),
    F: alike('stippled', /^finely stippled brown with salmon breast and gold hackle$/),
  },
  {
    claim:
      'gold wheaten: the cock black on breast and tail, the hen wheat-coloured above, paler on the breast, dark in the tail',
    ref: 'Chaboclub, gold-weizenfarbig',
    told: pair('e^Wh/e^Wh'),
    M: alike('black-breasted', /black breast and tail$/),
    F: alike('wheaten', /^wheat-coloured with cream breast, .*black tail$/),
  },
  {
    claim:
      'salmon: the cock ivory in the hackle, orange-red on the shoulder, black on the breast; the hen salmon with a cream breast',
    ref: 'Sonderverein seltene Zwerghühner, Holländische Zwerghühner lachsfarbig',
    told: pair('e^Wh/e^Wh Mh/Mh', 'S'),
    M: alike('black-breasted', /^silver hackle, red shoulders, black breast and tail$/),
    F: alike('wheaten', /^salmon brown back with cream breast$/),
  },
  {
    claim: 'black copper: black with copper in hackle and saddle of the cock, in the hackle of the hen',
    ref: 'The Marans Club, Black Copper',
    told: pair('E^R/E^R'),
    M: alike('birchen', /^black with copper hackle, shoulder and saddle$/),
    F: alike('birchen', /^black with copper hackle/),
  },
  {
    claim: 'blue laced: hackle darker, each feather of the breast edged with a darker shade',
    ref: 'Chickscope, University of Illinois, Standard varieties of chickens: Andalusians',
    told: pair('E/E Bl/bl+ Pg/Pg Ml/Ml'),
    M: alike('single laced', /^blue, breast feathers edged darker$/),
    F: alike('single laced', /^blue, each feather edged darker$/),
  },
  {
    claim: 'silver spangled: silver-white, each feather ending in a black spangle, cock and hen',
    ref: 'Kleintierzuchtverein Haslach, Appenzeller Spitzhauben silber-schwarzgetupft',
    told: pair('E^R/E^R Db/Db Pg/Pg Ml/Ml', 'S'),
    M: alike('spangled', /^silver, each feather tipped with a black spangle$/),
    F: alike('spangled', /^silver, each feather tipped with a black spangle$/),
  },
  {
    claim: 'silver barred across: hackle and back white, the other parts barred with black',
    ref: 'huehner-hof.com, Farbschläge der Brakel',
    told: pair('E^R/E^R Db/Db Pg/Pg', 'S'),
    M: alike('autosomal barred', /^silver hackle and back, breast and body barred with black$/),
    F: alike('autosomal barred', /^silver, barred crosswise with black$/),
  },
  {
    claim: 'white marked with black: body white, head, hackle and tail black, both sexes alike',
    ref: 'Sonderverein Lakenfelder, Rassestandard',
    told: pair('e^b/e^b Co/Co Ml/Ml', 'S'),
    M: alike('belted', /^white body with solid black head, hackle and tail$/),
    F: alike('belted', /^white body with solid black head, hackle and tail$/),
  },
  {
    claim: 'mille fleur: gold ground, a black spot and a white pearl at the end of each feather',
    ref: 'federfuss.de, Porzellanfarbige Federfüßige Zwerghühner',
    told: pair('e^Wh/e^Wh Co/Co mo/mo'),
    M: alike('columbian', /^golden buff .*white-tipped \(mille fleur\)$/),
    F: alike('columbian', /^golden buff .*white-tipped \(mille fleur\)$/),
  },
  {
    claim: 'porcelain: the same with the ground paled to cream and the black to pale blue-grey',
    ref: 'federfuss.de, Anerkannte Farbenschläge: isabell-porzellanfarbig',
    told: pair('e^Wh/e^Wh Co/Co mo/mo lav/lav'),
    M: alike('columbian', /^pale straw with lavender .*white-tipped \(porcelain\)$/),
    F: alike('columbian', /^pale straw with lavender .*white-tipped \(porcelain\)$/),
  },
  {
    claim: 'speckled: mahogany, each feather tipped with white behind a black bar',
    ref: 'Britannic Rare Breeds, Speckled Sussex',
    told: pair('e^Wh/e^Wh Co/Co Mh/Mh mo/mo'),
    M: alike('black-tailed', /^deep red .*white-tipped \(speckled\)$/),
    F: alike('black-tailed', /^deep red .*white-tipped \(speckled\)$/),
  },
  {
    claim:
      'red pyle: white for black, the cock keeping gold hackle and red back, the hen creamy white with a salmon breast',
    ref: 'Bantam-Klub, rotgesattelt',
    told: pair('e+/e+ I/I'),
    M: alike('black-breasted', /^gold hackle and back, white breast and tail \(pyle\)$/),
    F: alike('stippled', /^creamy white back with salmon breast and gold hackle \(pyle\)$/),
  },
  {
    claim: 'red: rich red all over with a black tail',
    ref: 'The Eastern Poultryman, colour of the Rhode Island Red male',
    told: pair('e^Wh/e^Wh Co/Co Mh/Mh'),
    M: alike('black-tailed', /^deep red with a black tail$/),
    F: alike('black-tailed', /^deep red with a black tail$/),
  },
]

for (const { claim, ref, told, ...sexes } of rows)
  published(claim, { ref, status: 'read' }, () => {
    for (const sex of ['M', 'F'] as const) {
      const genotype = readGenotype(told[sex], sex)
      const { plumage } = express(sex, genotype.ok ? genotype.value : {})
      expect(genotype.ok).toBe(true)
      expect(plumage.pattern).toBe(sexes[sex].pattern)
      expect(plumage.words).toMatch(sexes[sex].says)
    }
  })

const chick = (sex: Sex, genotype: string): Look['chick'] => {
  const told = readGenotype(genotype, sex)
  if (!told.ok) throw new Error(genotype)
  return express(sex, told.value).chick
}

published(
  'cream autosexing down: the cockerel pale and blurred from head to rump, the pullet grey with a sharp dark stripe and a light head patch',
  {
    ref: 'British standard of the Cream Legbar, downs, as quoted on backyardchickens.com, thread 509483',
    status: 'read',
  },
  () => {
    const cockerel = chick('M', 'e+/e+ s+/s+ B/B ig/ig')
    const pullet = chick('F', 'e+/e+ s+/- B/- ig/ig')
    expect([cockerel.pattern, cockerel.headSpot]).toEqual(['blurred stripes', 'blurred'])
    expect([pullet.pattern, pullet.headSpot, pullet.colour]).toEqual(['striped', 'small', 'grey-brown'])
  },
)

published(
  'pure barred chicks: both sexes have a head spot, the cockerel a large one, the pullet a small one; grown cocks are lighter',
  { ref: 'University of Kentucky / eXtension, Sexing day-old chicks on small and backyard flocks', status: 'read' },
  () => {
    expect([chick('M', 'E/E B/B').headSpot, chick('F', 'E/E B/-').headSpot]).toEqual(['large', 'small'])
    expect(chick('M', 'E/E B/B').headSpotClear).toBe('clear')
  },
)

published(
  'marbled down on birchen with dark brown and the pattern gene',
  { ref: 'Carefoot 1988, Br. Poultry Sci. 29:785-790', status: 'read' },
  () => expect(chick('F', 'E^R/E^R Db/Db Pg/Pg').pattern).toBe('marbled'),
)
