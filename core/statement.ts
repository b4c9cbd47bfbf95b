// core/statement.ts: the door for flock statements: JSON in; the answer, a conflict of readings, or a fault out.
import { answer, type Answered, type StatementAnswer } from './statement/answer.ts'
import { readBirds } from './statement/birds.ts'
import { type Complain, type Fault, pathOf } from './statement/fault.ts'
import { readGenome } from './statement/genome.ts'
import { readQuery } from './statement/query.ts'
import { readStatement, type Statement } from './statement/schema.ts'
import { readTraits } from './statement/traits.ts'

export type { Answered, StatementAnswer }

/** Answers a flock statement. Never throws on account of what the JSON holds. */
export function answerStatement(json: unknown): StatementAnswer {
  const read = readStatement(json)
  return 'fault' in read ? told(read.fault) : understood(read.statement)
}

/** Reads to the end with a stand-in for what is wrong, and tells the first fault. */
function understood(statement: Statement): StatementAnswer {
  const faults: Fault[] = []
  const complain: Complain = (path, says) => void faults.push({ path: pathOf(path), says })
  const genome = readGenome(statement, complain)
  const traits = readTraits(statement, genome, complain)
  const birds = readBirds(statement, genome, traits, complain)
  const query = readQuery(statement, genome, traits, complain)
  const [first] = faults
  return first ? told(first) : answer({ genome, birds }, query)
}

const told = ({ path, says }: Fault): StatementAnswer => ({ error: path === '' ? says : `${path}: ${says}` })
