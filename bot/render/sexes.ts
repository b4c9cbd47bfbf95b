// bot/render/sexes.ts: cockerels and pullets side by side, one line each, or one for both where they are alike.
import { adults, combs, downs, shanks, symbols } from './chicks.ts'
import { line, strong } from './document.ts'
import { share } from './numbers.ts'
import type { Block } from './document.ts'
import type { Case } from '../../core/answer.ts'

type Parts = { readonly down: boolean; readonly grown: boolean }

const parts = (down: string, grown: string, wanted: Parts): string =>
  [...(wanted.down ? [down] : []), ...(wanted.grown ? [wanted.down ? `Grown: ${grown}` : grown] : [])].join('. ')

/** Down and grown look of each sex. */
export function bySex(one: Case, wanted: Parts): readonly Block[] {
  const { cockerels, pullets } = one
  const [cockDown, henDown] = [downs(cockerels), downs(pullets)]
  const dead = one.diesInEgg > 1e-9 ? [line(`Before hatching, ${share(one.diesInEgg)} of the embryos die.`)] : []
  if (wanted.down && cockDown === henDown) {
    const grown = wanted.grown ? grownOfBoth(one) : []
    return [line(strong('Chicks, both sexes: '), `${cockDown}.`), ...grown, ...dead]
  }
  return [
    line(strong('Cockerels: '), `${parts(cockDown, adults(cockerels), wanted)}.`),
    line(strong('Pullets: '), `${parts(henDown, adults(pullets), wanted)}.`),
    ...dead,
  ]
}

function grownOfBoth({ cockerels, pullets }: Case): readonly Block[] {
  const [cocks, hens] = [adults(cockerels), adults(pullets)]
  if (cocks === hens) return [line(strong('Grown, both sexes: '), `${cocks}.`)]
  return [line(strong('Grown cocks: '), `${cocks}.`), line(strong('Grown hens: '), `${hens}.`)]
}

const alike = (cocks: string, hens: string): string => (cocks === hens ? cocks : `cockerels ${cocks}; pullets ${hens}`)

/** Comb and shank, for those who asked. */
export const byLeg = ({ cockerels, pullets }: Case): readonly Block[] => [
  line(`Comb: ${alike(combs(cockerels), combs(pullets))}. Shanks: ${alike(shanks(cockerels), shanks(pullets))}.`),
]

export const symbolsOf = ({ cockerels, pullets }: Case): readonly Block[] => [
  line(`In symbols: cockerels ${symbols(cockerels)}; pullets ${symbols(pullets)}.`),
]
