import assert from "node:assert/strict";
import type { Problem } from "../../src/core/problem.ts";

/** Words that only a program says. */
const PROGRAM_WORDS = /\b(?:undefined|NaN|Infinity|null)\b|\[object|\bfunction\b/;
const LONGEST_MESSAGE = 2000;

/**
 * Every problem has all its words, says them briefly, and repeats no word of the machine.
 *
 * @param given what was read: its own words may be repeated
 */
export function expectPlain(problems: readonly Problem[], given: string): void {
	const ownWords = PROGRAM_WORDS.test(given);
	for (const { code, file, line, message, allowed } of problems) {
		assert.match(code, /^[a-z]+(-[a-z0-9]+)*$/);
		assert.ok(message.trim() !== "" && allowed.trim() !== "", `${code} has no words`);
		assert.ok(message.length <= LONGEST_MESSAGE + file.length, `${code} is not brief`);
		assert.ok(line === null || (Number.isInteger(line) && line > 0), `${code} in line ${line}`);
		if (!ownWords) assert.doesNotMatch(message, PROGRAM_WORDS);
		if (given.isWellFormed()) assert.ok(message.isWellFormed(), `${code} cuts a letter in two`);
	}
}
