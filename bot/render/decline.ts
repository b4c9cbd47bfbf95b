// bot/render/decline.ts: spoken to, but not this bot's work: one friendly line on what it can do.
import { line } from './document.ts'
import { forgotten, help, pictureUnread } from './sentences.ts'
import type { Document } from './document.ts'
import type { DeclineAnswer } from '../../core/answer.ts'
import type { DeclineQuestion } from '../../core/question.ts'

type Why = DeclineQuestion['why']
const crosses = 'I know crosses: name a cock and a hen and I say what hatches.'

const lines: Readonly<Record<string, Document>> = {
  'off-topic': [line(`That is not my field. ${crosses}`)],
  health: [line('A sick or hurt bird is for a vet, or an experienced keeper near you; I would only guess. ' + crosses)],
  law: [line('Rules and disease warnings differ from place to place: ask your local authority or a vet. ' + crosses)],
  photo: pictureUnread,
  thanks: [line('You are welcome. Good hatching!')],
  help,
  forgotten,
} satisfies Record<Why, Document>

export const declineBlocks = (answer: DeclineAnswer): Document => lines[answer.why] ?? [line(answer.summary)]
