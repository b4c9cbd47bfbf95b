// grammar/message.d.ts: types of the compiled grammar, which `npm run prepare` makes from message.ne.
import type { CompiledRules } from 'nearley'

declare const rules: CompiledRules
export default rules
