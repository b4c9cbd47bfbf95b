// test/grammar/keepers.ts: which kinds of answer count for which kinds of message, and whether the birds meant are in the answer.
import type { Answer } from '../../core/answer.ts'

export type Keeper = {
  readonly id: number
  readonly kind: string
  readonly text: string
  readonly sire: string | null
  readonly dam: string | null
  readonly askDue: boolean
  readonly before?: string
}

const answering = ['cross', 'partners', 'carrier', 'parents', 'hatch', 'lines', 'fact'] as const
const anything = [...answering, 'ask-back', 'decline'] as const

/** A question back also counts wherever one is due. */
const counting: Readonly<Record<string, readonly Answer['kind'][]>> = {
  plain_cross: ['cross'],
  cross_by_genotype: ['cross'],
  cross_with_line: ['cross', 'lines'],
  mixed_breed_genotype: ['cross', 'carrier'],
  sex_at_hatch: ['cross', 'fact', 'partners'],
  reverse_cross: ['cross', 'fact', 'partners'],
  hens_for_my_rooster: ['partners', 'cross', 'fact'],
  rooster_for_my_hens: ['partners', 'cross', 'fact'],
  next_generation: ['cross', 'fact'],
  lethal_welfare: ['cross', 'fact', 'partners', 'decline'],
  myth_check: ['cross', 'fact'],
  single_bird_fact: ['fact'],
  carrier_debate: ['carrier', 'fact'],
  progeny_inference: ['carrier', 'parents', 'fact', 'cross'],
  parentage_guess: ['parents', 'carrier', 'fact'],
  egg_colour: ['cross', 'fact', 'partners', 'carrier'],
  hen_profile: ['cross', 'fact', 'lines', 'partners'],
  economics_line_goal: ['lines', 'cross', 'fact', 'partners', 'hatch'],
  hatch_planning: ['hatch', 'fact'],
  ambiguous: ['ask-back'],
  off_topic: ['decline'],
  photo_dependent: ['ask-back', 'decline', 'fact', 'parents', 'cross', 'partners'],
  follow_up: answering,
  misspelt: answering,
  voice_dictated: answering,
  odd_input: anything,
  multi_question: anything,
}

export const kindCounts = ({ kind, askDue }: Keeper, answer: Answer): boolean =>
  counting[kind]?.includes(answer.kind) === true || (askDue && answer.kind === 'ask-back')

type Side = 'sire' | 'dam'

/** `Breed [line] {genes}`, several parted by `|`; what is not told or is only a description is not looked for. */
function wantedOf(
  told: string | null,
): readonly { readonly name: string; readonly line: string | undefined; readonly genes: readonly string[] }[] {
  return (told ?? '').split('|').map((part) => ({
    name: part.replace(/[[{(].*$/u, '').trim(),
    line: /\[([a-z-]+)\]/u.exec(part)?.[1],
    genes: (/\{(.*?)\}/u.exec(part)?.[1] ?? '').split(' ').filter(Boolean),
  }))
}

const textOf = (answer: Answer, side: Side): string => {
  const seen = answer as { sire?: unknown; dam?: unknown; birds?: unknown; provisional?: Answer }
  return JSON.stringify([seen[side], seen.birds]) + (seen.provisional ? textOf(seen.provisional, side) : '')
}

/** What of the birds meant is not in the answer; empty where all is. */
export function missingFrom(answer: Answer, keeper: Keeper): readonly string[] {
  return (['sire', 'dam'] as const).flatMap((side) => {
    const text = textOf(answer, side)
    return wantedOf(keeper[side]).flatMap(({ name, line, genes }) => [
      ...(name === '' || /^F1|^Split/u.test(name) || text.includes(`"breed":"${name}`) ? [] : [`${side} ${name}`]),
      ...(line === undefined || text.includes(`"line":"${line}"`) ? [] : [`${side} line ${line}`]),
      ...genes.filter((gene) => !text.includes(gene)).map((gene) => `${side} ${gene}`),
    ])
  })
}
