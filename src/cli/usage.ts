/** Wrong usage of the command line: said on standard error, exit status 2. */
export class UsageError extends Error {}

export const usage = `usage: npm run --silent cli -- COMMAND FILE [options]

commands
  evaluate                       every cell of a plan
  tornado    --result NAME       the result at both ends of each uncertain input
  breakeven  --result NAME --input NAME [--target 0] [--from A --to B]
                                 where the result comes to the target
  switching  --result NAME [--target 0]
                                 how far each input must move to flip the result
  grid       --result NAME --across NAME --down NAME [--steps 11]
                                 the result over two inputs
  risk       --result NAME [--draws 100000] [--seed 1] [--target 0]
                                 draws from all ranges: odds, what drives them, what to find out
  schedule                       balanced stages, whole boards, bottleneck
  budget     --against NAME      what changes between two plans, each thing once
  time       [--step NAME] [--allowance 15] [--allowance-of job|day] [--within 5] [--confidence 95]
                                 seconds per plant of each step; FILE holds timed trials

options where FILE is a model
  --plan NAME      the plan looked at (default: the last plan column)
  --against NAME   look at the difference plan - against
  --set name=5     another number for an input, in its own unit (repeatable)

options of all commands
  --json           one JSON document instead of a table
`;
