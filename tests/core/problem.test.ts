import { expect, test } from "vitest";
import { distinct, nowhere, problem } from "../../src/core/problem.ts";

test("problems that say the same at another place are two", () => {
	const words = { received: "", allowed: "", message: "" };
	const [one, other] = [
		problem({ ...nowhere, file: "b" }, { ...words, code: "a" }),
		problem({ ...nowhere, file: "" }, { ...words, code: "ab" }),
	];
	expect(distinct([one, other, one])).toEqual([one, other]);
});
