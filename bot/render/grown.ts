// bot/render/grown.ts: what chicks grow into, both sexes together where they are alike.
import { adults, usualTelling } from './chicks.ts'
import type { Case } from '../../core/answer.ts'

export const telling = { ...usualTelling, most: 2 }

/** What they grow into, both sexes together where they are alike. */
export function grown({ cockerels, pullets }: Case): string {
  const [cocks, hens] = [adults(cockerels, telling), adults(pullets, telling)]
  return cocks === hens ? `Grown, both sexes: ${cocks}.` : `Grown cocks ${cocks}; hens ${hens}.`
}
