// bot/render/picture/card/caption.ts: all that the picture of a cross says, in words, for those who cannot see it.
import type { Card, CrossShown, Row } from './card.ts'
import type { Half, Shown } from './shown.ts'
import { aboveWords } from './cells.ts'
import { eggWords, shellWords } from './eggs.ts'

export const captionOf = (card: Card): string =>
  [
    ...card.crosses.flatMap((cross) => crossLines(cross, card.crosses.length > 1)),
    ...card.remarks.map(sentence),
    sentence(card.moreCrosses),
  ]
    .filter(Boolean)
    .join('\n')

function crossLines(cross: CrossShown, oneOfSeveral: boolean): readonly string[] {
  const small = oneOfSeveral || cross.rows.length > 1
  return [
    `Drawing. Cock: ${cross.sire}. Hen: ${cross.dam}.`,
    ...cross.rows.flatMap((row) => [
      ...verdictLines(row),
      ...(row.asAbove ? [asAbove(cross)] : small ? pairLines(row) : largeLines(row)),
    ]),
    ...new Set(cross.rows.flatMap(({ remarks }) => remarks.map(sentence))),
    oneOfSeveral ? '' : sentence(cross.moreCases),
    cross.hen ? `${eggWords(cross.hen)}; ${shellWords(cross.hen)}.` : '',
  ]
}

function verdictLines({ given, verdictWords, sure, sign }: Row): readonly string[] {
  const verdict = [given, [verdictWords, sure].filter(Boolean).join('; ')].filter(Boolean).join(': ')
  return [
    sentence(verdict),
    sign ? `Look at the ${sign.name}, ${sign.window}: cockerels: ${sign.cockerel}; pullets: ${sign.pullet}.` : '',
  ]
}

const asAbove = ({ rows: [first] }: CrossShown): string => {
  const words = aboveWords(first?.sign)
  return `Cockerels: ${words}. Pullets: ${words}.`
}

const largeLines = ({ cockerels, pullets, chicksAlike, allGrown, grownAlike }: Row): readonly string[] => [
  ...(chicksAlike
    ? [`Chicks: both sexes alike: ${shown(cockerels.chicks, cockerels.rarerChicks)}.`]
    : [chickLine('Cockerel chicks', cockerels), chickLine('Pullet chicks', pullets)]),
  ...(grownAlike
    ? [`Grown: cocks and hens alike: ${shown(cockerels.grown, cockerels.rarerGrown)}.`]
    : [grownLine('Grown cock', cockerels), grownLine('Grown hen', pullets)]),
  allGrown.length > 0 ? `All grown birds: ${allGrown.join(', ')}.` : '',
]

const grownLine = (title: string, { grown, rarerGrown, allGrown }: Half): string =>
  `${title}: ${[shown(grown, rarerGrown), allGrown.join(', ')].filter(Boolean).join(grown.length > 1 ? '. All: ' : '; ')}.`

const chickLine = (title: string, half: Half): string => `${title}: ${shown(half.chicks, half.rarerChicks)}.`

const pairLines = ({ cockerels, pullets }: Row): readonly string[] =>
  [['Cockerels', cockerels] as const, ['Pullets', pullets] as const].map(
    ([title, { pairs, rarerPairs }]) => `${title}: ${shown(pairs, rarerPairs)}.`,
  )

/** 'half: black; single comb. a quarter: …'. */
const shown = (looks: readonly Shown[], rarer: string): string =>
  [
    ...looks.map(({ share, words, lesser }) =>
      [share, [words, lesser.join(', ')].filter(Boolean).join('; ')].filter(Boolean).join(': '),
    ),
    rarer,
  ]
    .filter(Boolean)
    .join('. ')

const sentence = (words: string): string => (words === '' ? '' : `${words}.`)
