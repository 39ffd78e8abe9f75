import { expect } from "vitest";
import type { Problem } from "../../src/core/problem.ts";

const CODE = /^[a-z]+(-[a-z]+)*$/;
const FILE = /^([a-z-]+\.csv)?$/;
const COLUMN = /^[a-z0-9_ ]*$/;
/** Words, and in them nothing that the program did not know. */
const MESSAGE = /^(?!.*\b(undefined|NaN)\b).{10,}$/s;

/** Problems as they are, once each is seen to be whole: it has a code and words, and what it names of a place can be found. */
export function wholeProblems(problems: readonly Problem[]): readonly Problem[] {
	expect(problems.filter((each) => !isWhole(each))).toEqual([]);
	return problems;
}

function isWhole({ weight, code, file, column, received, allowed, message }: Problem): boolean {
	return (
		["error", "advice"].includes(weight) &&
		CODE.test(code) &&
		FILE.test(file) &&
		COLUMN.test(column) &&
		typeof received === "string" &&
		typeof allowed === "string" &&
		MESSAGE.test(message)
	);
}
