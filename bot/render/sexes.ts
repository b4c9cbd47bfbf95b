// bot/render/sexes.ts: cockerels and pullets side by side, one line each, or one for both where they are alike.
import { adults, combs, downs, shanks } from './chicks.ts'
import { symbols, worthShowing, type Wanted } from './symbols.ts'
import { line, strong } from './document.ts'
import type { Block } from './document.ts'
import type { Telling } from './mixture.ts'
import type { Case } from '../../core/answer.ts'

type Parts = { readonly down: boolean; readonly grown: boolean }

const parts = (down: string, grown: string, wanted: Parts): string =>
  [...(wanted.down ? [down] : []), ...(wanted.grown ? [wanted.down ? `Grown: ${grown}` : grown] : [])].join('. ')

const colourUnknown = [line('What colours hatch hangs on the parents’ own: tell me those and I say.')]

const dead = ({ diesInEgg }: Case, telling: Telling): readonly Block[] =>
  diesInEgg > 1e-9 ? [line(`Before hatching, ${telling.say(diesInEgg)} of the embryos die.`)] : []

/** Down and grown look of each sex. */
export function bySex(one: Case, wanted: Parts, telling: Telling): readonly Block[] {
  if (one.colourKnown === false) return [...colourUnknown, ...dead(one, telling)]
  const [cockDown, henDown] = [downs(one.cockerels, telling), downs(one.pullets, telling)]
  const [cock, hen] = [adults(one.cockerels, telling), adults(one.pullets, telling)]
  if (wanted.down && cockDown === henDown)
    return [
      line(strong('Chicks, both sexes: '), `${cockDown}.`),
      ...(wanted.grown ? grown(cock, hen) : []),
      ...dead(one, telling),
    ]
  return [
    line(strong('Cockerels: '), `${parts(cockDown, cock, wanted)}.`),
    line(strong('Pullets: '), `${parts(henDown, hen, wanted)}.`),
    ...dead(one, telling),
  ]
}

const grown = (cock: string, hen: string): readonly Block[] =>
  cock === hen
    ? [line(strong('Grown, both sexes: '), `${cock}.`)]
    : [line(strong('Grown cocks: '), `${cock}.`), line(strong('Grown hens: '), `${hen}.`)]

const alike = (cocks: string, hens: string): string => (cocks === hens ? cocks : `cockerels ${cocks}; pullets ${hens}`)

/** Comb and shank, for those who asked. */
export function combAndShank({ cockerels, pullets }: Case, telling: Telling): readonly Block[] {
  const comb = alike(combs(cockerels, telling), combs(pullets, telling))
  return [line(`Comb: ${comb}. Shanks: ${alike(shanks(cockerels, telling), shanks(pullets, telling))}.`)]
}

/** @param wanted alleles the keeper wrote; genes on which all chicks agree are left out unless he wrote one of them */
export function inSymbols({ cockerels, pullets }: Case, telling: Telling, wanted: Wanted): readonly Block[] {
  const shown = worthShowing([...cockerels, ...pullets], wanted)
  const words = alike(symbols(cockerels, telling, shown), symbols(pullets, telling, shown))
  return words === '' ? [] : [line(`In symbols: ${words}.`)]
}
