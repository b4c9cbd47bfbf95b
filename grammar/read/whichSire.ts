// grammar/read/whichSire.ts: "A and B, which should be the dad": both ways round are wanted, and nobody's father is sought.
import { isSolid, type Reader } from './common.ts'
import { crossOf } from './crossOf.ts'
import type { Bird } from '../bird.ts'
import type { Reading } from '../reading.ts'

const parent = '(?:dad|daddy|father|sire|papa|rooster|roo|cock|cockerel|male|mum|mom|mother|dam|hen)'
const which = '(?:which|who|wich)(?: (?:one|bird|breed|of them|of the two))?'
const choice = new RegExp(
  String.raw`\b(?:${which} (?:should|would|must|ought to|shall|is best|is better|do i|would i)\b(?: \w+){0,4}? ${parent}|(?:matter|matters|round|way)\b.{0,60}? ${which} (?:is|are|s)?\b(?: \w+){0,2}? ?${parent})\b`,
  'u',
)

const namedIn = ({ scene }: Reading): readonly Bird[] => {
  const all = [...scene.birds, ...scene.matings.flatMap(({ sires, dams }) => [...sires, ...dams])]
  const solid = all.filter((bird) => isSolid(bird) && bird.ref.breed !== undefined)
  return [...new Map(solid.map((bird) => [bird.ref.breed, bird])).values()]
}
const isSexed = ({ saidOf }: Bird): boolean =>
  saidOf.parts.some((part) => (part.type === 'cock' || part.type === 'hen') && !part.parent)

export const readWhichSire: Reader = (reading) => {
  const [one, other, ...rest] = namedIn(reading)
  if (!one || !other || rest.length > 0 || isSexed(one) || isSexed(other)) return undefined
  if (!choice.test(reading.words.join(' ')) || reading.scene.tallies.some(({ count }) => count > 1)) return undefined
  return crossOf(
    [
      { sire: one, dam: other, by: 'sex' },
      { sire: other, dam: one, by: 'sex' },
    ],
    reading,
  )
}
