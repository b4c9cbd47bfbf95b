// core/answers/fact/looks.ts: what cock and hen of a breed look like, as its genes play out.
import { mate } from '../../cross/mate.ts'
import type { Breed } from '../../breeds.ts'
import type { LookShare } from '../../answer.ts'

const commonest = (kinds: readonly LookShare[]): string => kinds.toSorted((a, b) => b.share - a.share)[0]?.adult ?? ''

/** 'Vorwerk: cocks buff with a black belt, hens the like.' Of the likeliest strain, where strains differ. */
export function looksOf({ name }: Breed, line: string | undefined): string {
  const ref = { breed: name, ...(line === undefined ? {} : { line }) }
  const [likeliest] = mate(ref, ref, { hen: false, reverse: false }).cases
  const [cock, hen] = [commonest(likeliest?.cockerels ?? []), commonest(likeliest?.pullets ?? [])]
  if (cock === '' && hen === '') return `What ${name} looks like hangs on the colour of your birds.`
  return cock === hen ? `${name}: cocks and hens ${cock}.` : `${name}: cocks ${cock}; hens ${hen}.`
}
