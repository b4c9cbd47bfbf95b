// core/answers/decline.ts: spoken to, but not this bot's work: one friendly line that says what it can do, or who can help.
import type { DeclineAnswer } from '../answer.ts'
import type { DeclineQuestion } from '../question.ts'

const lines: Readonly<Record<DeclineQuestion['why'], string>> = {
  'off-topic':
    'That is beyond me. I tell what a mating gives: name a cock and a hen, like “Rhode Island Red cock on Light Sussex hens”.',
  health: 'I know matings, not illness. Please ask a vet, and keep the bird apart and quiet until then.',
  law: 'That is for your local authority: ask them, or a vet, for the rules and the disease warnings in force near you.',
  photo:
    'I can’t see pictures. Tell me the parents and what you see: down colour, a pale spot on the head, stripes, comb.',
  thanks: 'You’re welcome. Name two birds whenever you want to know what they give.',
  help: 'Name a cock and a hen (“RIR cock on Light Sussex hens”), ask which hens suit your cock, who carries what, or how many eggs to set.',
  forgotten: 'Forgotten: I keep nothing of what you told me.',
}

export const answerDecline = ({ why }: DeclineQuestion): DeclineAnswer => ({
  kind: 'decline',
  why,
  summary: lines[why],
})
