// test/bot/picture/grown.test.ts: the plumage of grown birds: for each pattern, the right colour on the right part of hen and cock.
import { describe, expect, test } from 'vitest'
import { grown } from '../../../bot/render/picture/adult/draw.ts'
import { combOf } from '../../../bot/render/picture/adult/comb.ts'
import { blacks, flecks, flesh, reds, shankTone, shellTone, whiteTip } from '../../../bot/render/picture/palette.ts'
import { Plumage, type Look } from '../../../core/looks/look.ts'
import { colours, look, shares } from './looks.ts'

const { black: blackTints, red: redTints, pattern: patterns } = Plumage.shape
type Coat = Partial<Look['plumage']>
const boxes = {
  F: {
    breast: { x: [122, 134], y: [84, 100] },
    tail: { x: [20, 34], y: [40, 60] },
    hackle: { x: [104, 122], y: [52, 68] },
    wing: { x: [54, 78], y: [82, 92] },
  },
  M: {
    breast: { x: [130, 146], y: [92, 108] },
    tail: { x: [22, 32], y: [16, 28] },
    hackle: { x: [110, 132], y: [54, 74] },
    wing: { x: [92, 98], y: [88, 98] },
  },
} as const

const seen = (plumage: Coat, sex: 'M' | 'F', part: keyof (typeof boxes)['F'], form: Partial<Look['form']> = {}) =>
  shares(colours(grown(look({ plumage, form, shank: 'yellow' }), sex, 'light'), 170), boxes[sex][part])
const main = (...of: Parameters<typeof seen>) => seen(...of)[0]?.[0]
const both = (...of: Parameters<typeof seen>) => seen(...of).map(([colour]) => colour)
const gold = { black: 'black', red: 'gold' } as const
const silver = { black: 'black', red: 'silver' } as const

describe.each(blackTints.options.filter((tint) => tint !== 'none'))('solid %s', (black) => {
  test.each(['M', 'F'] as const)('covers breast, tail and hackle (%s)', (sex) => {
    for (const part of ['breast', 'tail', 'hackle'] as const)
      expect(main({ pattern: 'solid', black }, sex, part)).toBe(blacks[black].web)
  })
})

describe.each(redTints.options.filter((tint) => tint !== 'none'))('self %s', (red) => {
  test('covers a hen from head to tail', () => {
    for (const part of ['breast', 'tail', 'hackle', 'wing'] as const)
      expect(main({ pattern: 'self', black: 'none', red }, 'F', part)).toBe(reds[red].web)
  })
})

describe.each(['M', 'F'] as const)('columbian (%s)', (sex) => {
  test('is red or silver on the breast, black in the tail, and striped with black in the hackle', () => {
    for (const tones of [gold, silver]) {
      const plumage = { pattern: 'columbian', ...tones } as const
      expect(main(plumage, sex, 'breast')).toBe(reds[tones.red].web)
      expect(main(plumage, sex, 'tail')).toBe(blacks.black.web)
      expect(both(plumage, sex, 'hackle')).toEqual(expect.arrayContaining([reds[tones.red].web, blacks.black.web]))
    }
  })
  test('black-tailed has the tail and no stripes', () => {
    const plumage = { pattern: 'black-tailed', ...gold } as const
    expect(main(plumage, sex, 'tail')).toBe(blacks.black.web)
    expect(both(plumage, sex, 'hackle')).not.toContain(blacks.black.web)
  })
  test('belted has hackle and tail black and the body clear', () => {
    const plumage = { pattern: 'belted', ...silver } as const
    expect(main(plumage, sex, 'hackle')).toBe(blacks.black.web)
    expect(main(plumage, sex, 'breast')).toBe(reds.silver.web)
  })
})

test('the black of any pattern is drawn in what a diluter made of it', () => {
  for (const black of ['blue', 'lavender', 'chocolate', 'white'] as const)
    expect(main({ pattern: 'columbian', black, red: 'buff' }, 'F', 'tail')).toBe(blacks[black].web)
})

describe('black-breasted grounds', () => {
  test('the cock is black on the breast and red or silver in the hackle, whatever the ground', () => {
    for (const pattern of ['black-breasted', 'wheaten', 'partridge', 'stippled', 'pencilled'] as const) {
      expect(main({ pattern, ...gold }, 'M', 'breast')).toBe(blacks.black.web)
      expect(main({ pattern, ...gold }, 'M', 'hackle')).toBe(reds.gold.web)
    }
  })
  test('the stippled hen has a salmon breast in gold and in silver; the wheaten hen a cream one and a black tail', () => {
    for (const tones of [gold, silver])
      expect(main({ pattern: 'stippled', ...tones }, 'F', 'breast')).toBe(reds.salmon.web)
    expect(main({ pattern: 'wheaten', ...gold }, 'F', 'breast')).toBe(reds.cream.web)
    expect(main({ pattern: 'wheaten', ...gold }, 'F', 'tail')).toBe(blacks.black.web)
  })
  test('birchen is black with a coloured hackle', () => {
    expect(main({ pattern: 'birchen', ...silver }, 'F', 'wing')).toBe(blacks.black.web)
    expect(both({ pattern: 'birchen', ...silver }, 'F', 'hackle')).toContain(reds.silver.web)
  })
})

describe('patterns feather by feather', () => {
  test.each([
    'single laced',
    'double laced',
    'pencilled',
    'spangled',
    'autosomal barred',
    'partly laced',
    'mixed',
  ] as const)('%s shows both colours on the hen’s breast', (pattern) => {
    expect(both({ pattern, ...silver }, 'F', 'breast')).toEqual(
      expect.arrayContaining([reds.silver.web, blacks.black.web]),
    )
  })
  test('no two patterns make the same hen', () => {
    const hens = patterns.options
      .filter((pattern) => pattern !== 'black-breasted' && pattern !== 'partridge') // hens of these are stippled, pencilled
      .map((pattern) => grown(look({ plumage: { pattern, ...gold } }), 'F', 'light').markup)
    expect(new Set(hens).size).toBe(hens.length)
  })
  test('a hen-feathered cock wears the hen’s pattern and no sickles', () => {
    const plumage = { pattern: 'single laced', ...gold } as const
    const usual = grown(look({ plumage }), 'M', 'light').markup
    const hennish = grown(look({ plumage, form: { henFeathered: true } }), 'M', 'light').markup
    expect(hennish.length).not.toBe(usual.length)
    expect(both({ pattern: 'stippled', ...gold }, 'M', 'breast', { henFeathered: true })).toContain(reds.salmon.web)
  })
})

test('blue laced with darker blue, where there is no red, stays blue all over', () => {
  const blue = { pattern: 'single laced', black: 'blue', red: 'none' } as const
  expect(both(blue, 'F', 'breast').slice(0, 2).toSorted()).toEqual([blacks.blue.edge, blacks.blue.web])
})

test('a pyle hen has a cream back, a salmon breast and a white tail', () => {
  const pyle = { pattern: 'stippled', black: 'white', red: 'gold' } as const
  expect(main(pyle, 'F', 'wing')).toBe(reds.cream.web)
  expect(main(pyle, 'F', 'breast')).toBe(reds.salmon.web)
  expect(main(pyle, 'F', 'tail')).toBe(blacks.white.web)
})

describe('what lies over every pattern', () => {
  const bars = '#e7e6df'
  test('barring crosses black with white, two doses with more of it than one', () => {
    const white = (barring: Look['plumage']['barring']) =>
      seen({ pattern: 'solid', black: 'black', barring }, 'F', 'breast').find(([colour]) => colour === bars)?.[1] ?? 0
    expect(white('none')).toBe(0)
    expect(white('single dose')).toBeGreaterThan(0.1)
    expect(white('double dose')).toBeGreaterThan(white('single dose') * 1.3)
  })
  test('barring shows on silkie feathers, dimmed', () => {
    const drawing = (barring: Look['plumage']['barring']) =>
      grown(look({ plumage: { barring }, form: { feather: 'silkie' } }), 'F', 'light').markup
    expect(drawing('double dose')).toContain(bars)
    expect(drawing('none')).not.toContain(bars)
  })
  test('barring does not show on white', () => {
    expect(both({ pattern: 'white', white: true, barring: 'double dose' }, 'F', 'breast')).not.toContain(bars)
  })
  test('mottling tips feathers with white, splash flecks them, and dark flecks stay few', () => {
    expect(both({ pattern: 'solid', mottled: true }, 'F', 'breast')).toContain(whiteTip)
    const { markup } = grown(look({ plumage: { pattern: 'solid', black: 'splash' } }), 'F', 'light')
    expect(markup).toContain(flecks.splash)
    expect(main({ pattern: 'white', white: true, black: 'white with dark flecks' }, 'F', 'breast')).toBe(
      blacks['white with dark flecks'].web,
    )
  })
})

describe('form', () => {
  const plain = grown(look(), 'M', 'light').markup
  test.each([
    { crest: 'small' },
    { crest: 'large' },
    { muffs: 'full' },
    { feet: 'feathered' },
    { feather: 'frizzled' },
    { feather: 'over-frizzled' },
    { feather: 'silkie' },
    { neck: 'naked' },
    { neck: 'bow-tie' },
    { toes: 'five' },
    { tail: 'rumpless' },
    { legs: 'short' },
    { legs: 'dwarf' },
    { tufts: 'tufted' },
    { comb: 'rose' },
    { comb: 'pea' },
    { comb: 'walnut' },
    { comb: 'V' },
    { comb: 'buttercup' },
    { comb: 'none' },
  ] as const)('%o is drawn', (form) => {
    expect(grown(look({ form }), 'M', 'light').markup).not.toBe(plain)
  })
  test('a naked neck is bare skin where the hackle was', () => {
    expect(main({ pattern: 'solid' }, 'F', 'hackle', { neck: 'naked' })).toBe(flesh.bare)
  })
  test.each([
    ['single', 'single'],
    ['rose or single', 'rose'],
    ['pea or single', 'pea'],
    ['split walnut', 'walnut'],
    ['buttercup', 'cup'],
    ['V', 'V'],
    ['Y', 'Y'],
    ['something unheard of', 'single'],
  ] as const)('the core’s word %s is drawn as a %s comb', (word, kind) => {
    expect(combOf(word)).toBe(kind)
  })
})

test.each([
  ['dusky yellow', 'dusky yellow'],
  ['dark slate or dark willow', 'dark slate'],
  ['yellow, mottled', 'yellow'],
  ['white or yellow', 'white'],
] as const)('the core’s word %s for shanks is drawn as %s', (said, drawn) => {
  expect(shankTone(said)).toBe(shankTone(drawn))
  expect(shankTone(drawn)).not.toBe(shankTone('unheard of'))
})

test('shells take the fuller word: very dark brown is dark brown, light brown is not brown', () => {
  expect(shellTone('very dark brown')).toBe(shellTone('dark brown'))
  expect(shellTone('light brown')).not.toBe(shellTone('brown'))
  expect(shellTone('pale blue-green')).toBe(shellTone('blue-green'))
})
