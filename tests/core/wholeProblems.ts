import { expect } from "vitest";
import type { Problem } from "../../src/core/problem.ts";

/** Problems as they are, once each is seen to be whole: it has a code and words, and what it names of a place can be found. */
export function wholeProblems(problems: readonly Problem[]): readonly Problem[] {
	for (const each of problems)
		expect(each).toMatchObject({
			weight: expect.stringMatching(/^(error|advice)$/),
			code: expect.stringMatching(/^[a-z]+(-[a-z]+)*$/),
			file: expect.stringMatching(/^([a-z-]+\.csv)?$/),
			column: expect.stringMatching(/^[a-z_ ]*$/),
			received: expect.any(String),
			allowed: expect.any(String),
			message: expect.stringMatching(/^.{20,}$/s),
		});
	return problems;
}
