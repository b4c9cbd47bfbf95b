// test/core/crosses/readThrough.test.ts: what a breeder would stumble over, held over many matings at once, and each slip once found.
import { describe, expect, test } from 'vitest'
import { answerCross } from '../../../core/answers/cross.ts'
import { express } from '../../../core/looks/express.ts'
import { mate } from '../../../core/cross/mate.ts'
import type { Case, LookShare } from '../../../core/answer.ts'
import type { Genotype } from '../../../core/vocabulary.ts'
import { matings, parentsOf, questionOf } from '../../tools/crossTable/matings.ts'

const plain = { hen: false, reverse: false }
const casesOf = (mating: string): readonly Case[] => {
  const { sire, dam } = parentsOf(mating)
  return mate(sire, dam, plain).cases
}
const chicks = ({ cockerels, pullets }: Case): readonly LookShare[] => [...cockerels, ...pullets]
const summaryOf = (mating: string): string => answerCross(questionOf(mating)).summary

describe.each(matings)('%s', (mating) => {
  const cases = casesOf(mating)

  test('a white bird has no bars, and white-turned parts are not called dark or black', () => {
    for (const { look, adult } of cases.flatMap(chicks)) {
      if (look.plumage.white) expect(adult).not.toMatch(/barred|\bblack\b/)
      if (look.plumage.black.startsWith('white')) expect(adult).not.toMatch(/dark-barred|dark marks|stippl|\bblack\b/)
    }
  })

  test('bars come from a barred parent, and two doses to cocks alone', () => {
    for (const { pullets } of cases)
      for (const { look } of pullets) expect(look.plumage.barring).not.toBe('double dose')
  })

  test('no two kinds of one sex read alike in all that is known', () => {
    for (const { cockerels, pullets } of cases)
      for (const kinds of [cockerels, pullets]) {
        const words = kinds.map((kind) =>
          JSON.stringify({ ...kind, share: 0, alleles: '', look: kind.look.chick.groundClear }),
        )
        expect(new Set(words).size).toBe(words.length)
      }
  })

  test('a sign names a difference, and one that tells nothing is not shown', () => {
    for (const { sexing } of cases)
      for (const { sign, cockerel, pullet } of sexing.signs) {
        expect({ sign, same: cockerel === pullet }).toEqual({ sign, same: false })
        expect(`${sign}: ${cockerel} / ${pullet}`).not.toMatch(/no spot to be seen \/ no spot on the head$/)
      }
  })

  test('the summary is short, opens with the verdict, or with harm to a quarter of the chicks, and keeps to what it hangs on', () => {
    const summary = summaryOf(mating)
    expect(summary.length).toBeLessThanOrEqual(160)
    expect(summary).toMatch(
      /^(Both birds (?:short-legged|tufted): a quarter|Frizzle to frizzle: a quarter|Yes|Partly|Not sexable|It depends|Sexing at hatch hangs|(?:Half|A quarter|Three quarters|Two thirds|[^.;]*); (?:not sexable|sexing))/,
    )
    if (summary.startsWith('It depends')) expect(summary).not.toContain('blue egg')
  })
})

const bird = (genotype: Genotype, sex: 'M' | 'F') => express(sex, genotype).plumage.words
const ground: Genotype = { E: ['e^Wh', 'e^Wh'], S: ['s+', 's+'] }

describe('dominant white over other patterns', () => {
  test('barred red with white tail: no dark bars are left', () => {
    const words = bird({ ...ground, Co: ['Co', 'Co'], I: ['I', 'i+'], B: ['B', 'b+'] }, 'M')
    expect(words).toBe('golden buff barred with white, with white in hackle and tail')
  })

  test('a birchen hen is white with a coloured hackle, not dark', () => {
    expect(bird({ E: ['E^R', 'e^b'], S: ['s+'], I: ['I', 'i+'] }, 'F')).toBe('creamy white with copper hackle')
  })

  test('red-tailed white and mottled birds are not called buff columbian', () => {
    expect(bird({ ...ground, Co: ['Co', 'Co'], I: ['I', 'I'] }, 'M')).not.toContain('columbian')
    expect(bird({ ...ground, Co: ['Co', 'Co'], mo: ['mo', 'mo'] }, 'M')).toMatch(/mille fleur/)
    expect(bird({ ...ground, Co: ['Co', 'Co'], mo: ['mo', 'mo'] }, 'M')).not.toContain('columbian')
  })
})

describe('later signs', () => {
  test('white cockerels and red pullets are told by their new feathers', () => {
    const [one] = casesOf('New Hampshire x Rhode Island White')
    expect(one!.sexing.laterSign).toMatchObject({ sign: 'plumage', window: 'from 4 to 6 weeks' })
  })

  test('colour in the hackle of a black bird comes too late for that', () => {
    const [one] = casesOf('{E/E s+/s+} x {e^Wh/e^Wh S/-}')
    expect(one!.cockerels[0]!.look.plumage.pattern).toBe('solid with leakage')
    expect(one!.sexing.laterSign!.window).toBe('from 6 to 12 weeks')
  })
})

describe('spots that cannot be seen', () => {
  test('pale barred cockerels and red barred pullets are told by down; a spot on the pullets alone tells nothing more', () => {
    const [one] = casesOf('Rhodebar x Light Sussex')
    expect(one!.sexing.signs.map(({ sign }) => sign)).toEqual(['down colour'])
    expect(one!.sexing.accuracy).toBeLessThan(0.98)
  })

  test('no spot is read for sure on blue and splash chicks', () => {
    const [one] = casesOf('Blue Orpington x Barred Plymouth Rock')
    expect(one!.sexing.accuracy).toBeLessThan(0.95)
  })
})

describe('reasons and ways to tell', () => {
  test('silver over gold is the reason where dominant white hides no ground', () => {
    for (const { sexing } of casesOf('Rhode Island White x Rhode Island Red'))
      expect(sexing.why).toMatch(/^a silver cock/)
  })

  test('the way to tell is for what sets the cases apart: tufts are looked for', () => {
    const cases = casesOf('Cream Legbar x Araucana')
    expect(cases.map(({ given }) => given)).toEqual(['the hens are tufted', 'the hens are clean-faced'])
    for (const { howToTell } of cases) expect(howToTell).toMatch(/tufts/)
  })

  test('no living bird has two copies of a lethal (ear tufts: Somes & Pabilonia 1981)', () => {
    for (const { given } of casesOf('Araucana x Araucana')) expect(given).not.toContain('Et/Et')
  })

  test('cases that no keeper could tell apart are one', () => {
    expect(casesOf('Buff Laced Polish x Golden Laced Polish')).toHaveLength(1)
  })

  test('a reason that holds in the likeliest case only is told as likely', () => {
    expect(summaryOf('White Cornish x Golden Laced Wyandotte')).toMatch(/^Not sexable at hatch, most likely because /)
  })
})

describe('birds bred on', () => {
  test('Black sex-link hens under a red cock: half the chicks black, or all of them, by what their sire was', () => {
    const cases = casesOf('Rhode Island Red x Black sex-link')
    expect(cases.map(({ given }) => given)).toEqual([
      'the hens are bred from Rhode Island Red on Barred Plymouth Rock',
      'the hens are bred from Black Australorp on Barred Plymouth Rock',
    ])
    const black = cases.map((one) =>
      one.pullets.filter(({ down }) => down.startsWith('black')).reduce((sum, { share }) => sum + share, 0),
    )
    expect(black[0]).toBeCloseTo(0.5, 6)
    expect(black[1]).toBeCloseTo(1, 6)
  })

  test('Silkie by Minorca, second generation: 9 black to 3 game to 4 white where no black is under the white (Davenport 1909, Table 58)', () => {
    const cases = casesOf('(White Silkie x Black Minorca) x (White Silkie x Black Minorca)')
    const game = cases.find(({ given }) => given.includes('not black under the white'))!
    const share = (test: RegExp): number =>
      game.cockerels.filter(({ adult }) => test.test(adult)).reduce((sum, one) => sum + one.share, 0)
    expect(share(/^white/)).toBeCloseTo(4 / 16, 6)
    expect(share(/^black/)).toBeCloseTo(9 / 16, 6)
    expect(share(/back/)).toBeCloseTo(3 / 16, 6)
  })

  test('the summary tells no mix that holds in one case only', () => {
    expect(summaryOf('(White Silkie x Black Minorca) x (White Silkie x Black Minorca)')).not.toMatch(/quarter/)
  })
})

describe('the summary', () => {
  test('blue on blue: half blue, a quarter each of splash and black (Punnett 1911), told in the first line', () => {
    expect(summaryOf('Blue Andalusian x Blue Andalusian')).toMatch(
      /^Half blue, a quarter (splash, a quarter black|black, a quarter splash); not sexable/,
    )
  })

  test('where there are other ways to the verdict than the one that is told, the rest is mostly otherwise', () => {
    expect(summaryOf('Rhode Island Red x White Plymouth Rock')).toMatch(/; else mostly not sexable\.$/)
  })
})

test('where the colours are not told, neither is what black does to the shanks', () => {
  for (const { shank } of casesOf('Frizzle x Frizzle').flatMap(chicks)) expect(shank).not.toMatch(/dusky|dark /)
})

test('gold and silver unread under dominant white: the reason says so', () => {
  const [one] = casesOf('{e+/e+ s+/s+ i+/i+} x {e+/e+ S/- I/I}')
  expect(one!.sexing.why).toBe('dominant white pales the down, so that gold and silver cannot be read in it')
})

test('two downs of each sex are told in one breath', () => {
  const [sign] = casesOf('Chocolate Orpington x Blue Orpington')[0]!.sexing.signs
  expect(sign).toMatchObject({ pullet: 'mauve or chocolate, pale-bellied down' })
})

describe('read through a second time', () => {
  const only = (mating: string): Case => casesOf(mating)[0]!

  test('what a white Silkie hides colours his chicks: black or not, silver or gold, though all are sexed by the skin', () => {
    const cases = casesOf('White Silkie x New Hampshire')
    expect(new Set(cases.map(({ sexing }) => `${sexing.verdict} ${sexing.signs[0]?.sign}`))).toEqual(
      new Set(['yes skin colour']),
    )
    expect(cases.map(({ cockerels }) => cockerels[0]!.down)).toEqual([
      expect.stringMatching(/^black/),
      expect.stringMatching(/^silver/),
      expect.stringMatching(/^golden/),
    ])
  })

  test('washed-out stripes beside faint ones are no sure sign', () => {
    const ground = { E: ['e^Wh', 'e+'], Co: ['Co', 'co+'] }
    const { sexing } = mate(
      { genotype: { ...ground, E: ['e^Wh', 'e^Wh'], B: ['B', 'B'] } },
      { genotype: { ...ground, E: ['e^b', 'e^b'], B: ['B'] } },
      plain,
    ).cases[0]!
    expect(sexing.verdict).toBe('partly')
    expect(sexing.accuracy!).toBeLessThan(0.85)
  })

  test('a pyle has white where bars would show: no white bars on white, no crele', () => {
    const pyle: Genotype = { E: ['e+', 'e+'], I: ['I', 'I'], B: ['B', 'b+'] }
    expect(express('M', pyle).plumage.words).toBe(
      'gold hackle and back, barred with white, white breast and tail (pyle)',
    )
  })

  test('a blue bird stays blue on a mixed birchen ground, and a barred columbian is not called light or buff columbian', () => {
    expect(express('F', { E: ['E^R', 'e+'], Bl: ['Bl', 'bl+'] }).plumage.words).toMatch(/^mostly blue/)
    const delaware: Genotype = { E: ['e^Wh', 'e^Wh'], Co: ['Co', 'Co'], S: ['S'], B: ['B'] }
    expect(express('F', delaware).plumage.words).toBe('white with dark-barred hackle and tail')
  })

  test('a pale spot on blue down is less plain than on black, and still tells (phenotype rules of barring: readable on blue)', () => {
    const [onBlack, onBlue] = ['Black Orpington', 'Splash Orpington'].map(
      (sire) => only(`${sire} x Barred Plymouth Rock`).sexing,
    )
    expect([onBlack!.verdict, onBlue!.verdict]).toEqual(['yes', 'yes'])
    expect(onBlue!.accuracy!).toBeLessThan(onBlack!.accuracy!)
  })

  // The breeds were made for it; "Autosexing fowls save feeding stuffs" (Papers Past, 1942) names Cambar, Dorbar, Brussbar and Buffbar.
  test.each([
    'Cambar',
    'Dorbar',
    'Brussbar',
    'Buffbar',
    'Brockbar',
    'Rhodebar',
    'Wybar',
    'Welbar',
    'Polbar',
    'Gold Legbar',
    'Cream Legbar',
    'Bielefelder',
  ])('%s bred pure is sexed at hatch, the cockerel by paler down', (breed) => {
    const cases = casesOf(`${breed} x ${breed}`)
    expect(new Set(cases.map(({ sexing }) => sexing.verdict))).toEqual(new Set(['yes']))
    expect(cases[0]!.sexing.signs[0]!.sign).toMatch(/stripes|down colour/)
  })

  test('where the books differ on dark or pale down, the chicks carry a hedge', () => {
    const hedges = (mating: string): string => only(mating).cockerels[0]!.look.hedges.join('; ')
    expect(hedges('Rhodebar x Rhodebar')).toContain('the books differ')
    expect(hedges('Golden Sebright x Silver Sebright')).toContain('confirm by the first feathers')
  })

  test('a lavender duckwing hen is not brown; on brown one dose of dark brown stands between pencilled and barred (Carefoot, pencilling and autosomal barring)', () => {
    expect(express('F', { E: ['e+', 'e+'], lav: ['lav', 'lav'] }).plumage.words).toMatch(/^finely stippled pale grey/)
    const half = express('F', { E: ['e^b', 'e^b'], Pg: ['Pg', 'Pg'], Db: ['Db', 'db+'] })
    expect(half.plumage.pattern).toBe('pencilled')
    expect(half.hedges).toContain('the pencilling runs partly into bars')
  })

  test('all four combs of a second cross of walnut are told, the rare single with them', () => {
    expect(only('(White Silkie x Black Minorca) x (White Silkie x Black Minorca)').cockerels[0]!.comb).toBe(
      'walnut or pea or rose or single',
    )
  })

  test.each([
    ['Pyle bird x Light Sussex', /wild-type ground.*wheaten ground/],
    [
      "Silverudd's Blue x Light Sussex",
      /not sexable if the cock is pure for black; partly sexable if the cock is on a birchen ground/,
    ],
    ['Phoenix x Columbian Leghorn', /silver hiding one copy of gold/],
  ])('%s: what it hangs on differs from verdict to verdict, and no egg is in it', (mating, says) => {
    const summary = summaryOf(mating)
    expect(summary).toMatch(says)
    expect(summary).not.toContain('blue egg')
    const conditions = summary.split('; ').map((part) => part.replace(/^.* if /, '').replace(/\.$/, ''))
    expect(new Set(conditions).size).toBe(conditions.length)
  })
})
