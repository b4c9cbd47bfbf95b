// bot/catalogue/print.ts: what the catalogue command prints, as plain lines.
import type { Card, coverage, nameCounts, Row, RowFault } from '../../core/catalogue.ts'

const table = (rows: readonly (readonly string[])[]): readonly string[] => {
  const widths = rows[0]?.map((_, at) => Math.max(...rows.map((row) => row[at]?.length ?? 0))) ?? []
  return rows.map((row) =>
    row
      .map((cell, at) => cell.padEnd(widths[at] ?? 0))
      .join('  ')
      .trimEnd(),
  )
}

export function listLines(rows: readonly Row[], counts: ReturnType<typeof nameCounts>): readonly string[] {
  const cells = rows.map(({ name, type, lines }) => [name, type, lines.join(', ')])
  return [
    ...table([['name', 'type', 'lines'], ...cells]),
    `${rows.length} birds; ${counts.names} names and spellings in the whole catalogue, ${counts.bare} words that mean several birds.`,
  ]
}

const section = (title: string, lines: readonly string[]): readonly string[] =>
  lines.length > 0 ? [`${title}:`, ...lines.map((line) => `  ${line}`)] : []

const lineWords = ({ id, differs, covers, alsoCalled }: Card['breed']['lines'][number]): string => {
  const also = [...covers, ...alsoCalled]
  return [id, differs ? `: ${differs}` : '', also.length > 0 ? ` (also said: ${also.join(', ')})` : ''].join('')
}

const agrees = ({ colour }: Card): string =>
  colour === undefined ? 'a variety of many colours' : 'the looks agree with it'

export function cardLines(card: Card): readonly string[] {
  const { breed, genes, genotype, looks, figures, hedges, says, crosses, sources } = card
  const doubtful = genes.filter(({ confidence }) => confidence === 'low').map(({ locus, name }) => `${locus} (${name})`)
  const named = [...breed.alsoCalled, ...breed.misspelt]
  return [
    `${breed.name}${card.line ? `, ${card.line} line` : ''}  (${breed.family}; ${breed.class}, ${breed.type})`,
    ...section('also called', named.length > 0 ? [named.join(', ')] : []),
    ...section(
      'genes',
      table(genes.map((gene) => [gene.locus, gene.carries, gene.confidence, gene.status, gene.name])),
    ),
    ...section('likeliest bird', [`cock ${genotype.M || 'wild type'}`, `hen  ${genotype.F || 'wild type'}`]),
    ...section('looks, as the rules make them', [
      `cock: ${looks.cock}`,
      `hen: ${looks.hen}`,
      `cock chick: ${looks.cockChick}`,
      `hen chick: ${looks.henChick}`,
    ]),
    ...section(
      `colour: ${card.colour ?? 'none named'}`,
      card.colourFaults.length > 0 ? card.colourFaults : [agrees(card)],
    ),
    ...section('form', [`comb ${breed.comb}, shank ${breed.shank}`]),
    ...section('figures', table(figures.map(({ what, value, status }) => [what, value, status]))),
    ...section('lines', breed.lines.map(lineWords)),
    ...section('least sure', doubtful.length > 0 ? [doubtful.join(', ')] : []),
    ...section('hedges of the rules', hedges),
    ...section('asked about it, the bot says', says),
    ...section(
      'asked about matings, the bot says',
      crosses.map(({ mating, summary }) => `${mating}: ${summary}`),
    ),
    ...section(
      'sources',
      sources.flatMap(({ about, by }) => by.map(({ ref, status }) => `${about}: ${ref} [${status}]`)),
    ),
  ]
}

const percent = (part: number, whole: number): string =>
  `${part} (${whole === 0 ? 0 : Math.round((100 * part) / whole)} %)`

export function coverageLines({ birds, counts, confidence }: ReturnType<typeof coverage>): readonly string[] {
  const rows = counts.map((count) => [
    count.what,
    String(count.facts),
    percent(count.read, count.facts),
    percent(count['common practice'], count.facts),
    percent(count['from memory'], count.facts),
  ])
  const sure = Object.entries(confidence).map(([level, n]) => `${n} ${level}`)
  return [
    `${birds} birds.`,
    ...table([['', 'facts', 'read', 'common practice', 'from memory'], ...rows]),
    `How sure the genes are: ${sure.join(', ')}.`,
  ]
}

export const faultLines = (faults: readonly RowFault[]): readonly string[] =>
  faults.map(({ where, why }) => `${where}: ${why}`)
