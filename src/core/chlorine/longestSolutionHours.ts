/** No mixed solution is used for longer than this, whatever is typed (sources.solutionLife). */
export const LONGEST_SOLUTION_HOURS = 24;
