import { advice, nowhere, type Problem, problem } from "../problem.ts";
import { say } from "../say.ts";

/** A second workbook of a unit: both count, because nobody can tell which is the right one. */
export function namedTwice(unit: string, path: string): Problem {
	return advice(nowhere, {
		code: "unit-named-twice",
		received: unit,
		allowed: say`each unit's workbook once`,
		message: say`${path} is not the only workbook of ${unit}: both are counted. Is one a copy? Take it out of the folder.`,
	});
}

/** Plans that do not begin together. */
export function firstDaysDiffer(first: string, last: string): Problem {
	return advice(nowhere, {
		code: "first-days-differ",
		received: `${first}, ${last}`,
		allowed: say`one first day for all units`,
		message: say`The units' plans begin on different days, from ${first} to ${last}, so the sums are of different days.`,
	});
}

/** A unit on which this program itself failed. */
export function failedUnit(trouble: unknown): Problem {
	const received = trouble instanceof Error ? trouble.message : String(trouble);
	return problem(nowhere, {
		code: "program-error",
		received,
		allowed: say`a unit that can be planned`,
		message: say`Program error; your data are safe. Please report this unit: ${received}`,
	});
}
