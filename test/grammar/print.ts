// test/grammar/print.ts: a question in one line, as the tables of messages write it.
import { understand } from '../../grammar/understand.ts'
import { emptyContext } from '../../grammar/context.ts'
import type { BirdRef, Question, Tally } from '../../core/question.ts'

/** `Rhode Island Red[heritage]{S/s+}`, `?=(A x B)` for a cross-bred bird, `?` where no breed is told. */
export function printBird({ breed, line, genotype, cross, name }: BirdRef): string {
  const genes = genotype
    ? `{${Object.values(genotype)
        .map((pair) => pair.join('/'))
        .join(' ')}}`
    : ''
  const parents = cross ? `=(${printBird(cross.sire)} x ${printBird(cross.dam)})` : ''
  return `${breed ?? '?'}${line ? `[${line}]` : ''}${genes}${parents}${name ? `"${name}"` : ''}`
}
const birds = (refs: readonly BirdRef[]): string => refs.map(printBird).join(',')

const counted = ({ year, hens }: { readonly year?: number | undefined; readonly hens?: number | undefined }): string =>
  `${year === undefined ? '' : ` year ${year}`}${hens === undefined ? '' : ` hens ${hens}`}`

const chicks = (tallies: readonly Tally[] = []): string =>
  tallies.length === 0
    ? ''
    : ` ${tallies.map(({ count, shows, look }) => `${count} ${shows === false ? 'not ' : ''}${look}`).join(', ')}`

const told = (question: Question): string => {
  switch (question.kind) {
    case 'cross':
      return `${question.matings.map(({ sire, dam }) => `${printBird(sire)} x ${printBird(dam)}`).join('; ')} <${question.aspects.join(',')}>${chicks(question.counted)}`
    case 'partners':
      return `wanted ${question.wanted} for ${birds(question.for)} goals ${question.goals.join(',')}${question.among.length > 0 ? ` among ${birds(question.among)}` : ''}${question.minimumEggs ? ` min ${question.minimumEggs}` : ''}`
    case 'ask-back':
      return `${question.missing} about ${question.about ?? '-'} birds ${birds(question.birds)} options ${question.options.map(({ label }) => label).join(' | ')}`
    case 'fact':
      return `${question.topic} ${birds(question.birds)} ${question.locus ?? ''}`
    case 'carrier':
      return `${question.of} ${question.allele}`
    case 'parents':
      return `sires ${birds(question.sires)} dams ${birds(question.dams)} egg ${question.egg ?? '-'}`
    case 'hatch': {
      const { kind: _, assumed: _a, manner: _m, ...rest } = question
      return JSON.stringify(rest)
    }
    case 'lines':
      return `${question.topic} goals ${question.goals.join(',')} compare ${birds(question.compare)} ${JSON.stringify(question.prices)}${counted(question)}`
    case 'decline':
      return question.why
    case 'error':
      return JSON.stringify(question.fault)
    case 'silent':
      return ''
  }
}
export const print = (question: Question): string => `${question.kind} ${told(question)}`.trim()

/** The question of a message, after another where one is given. */
export function asked(text: string, before?: string): Question {
  const context = before === undefined ? emptyContext() : understand(before, emptyContext()).context
  return understand(text, context).question
}
