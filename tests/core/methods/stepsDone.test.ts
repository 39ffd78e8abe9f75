import { expect, test } from "vitest";
import type { Method } from "../../../src/core/methods/method.ts";
import { stepsDone } from "../../../src/core/methods/stepsDone.ts";
import { answerOf } from "../answerOf.ts";

test.each<[Method[][], string[]]>([
	[[["boiling"]], ["wash", "boil"]],
	[
		[["boiling"], ["chlorine"]],
		["wash", "soak", "boil"],
	],
	[[["steam", "chlorine"]], ["wash", "soak"]],
	[[[]], ["wash"]],
])("of kinds that go by %o: %o", (methods, names) => {
	const step = { basis: "load", minutes: 20, hands_on: "no" } as const;
	const steps = [
		{ ...step, step: "wash" },
		{ ...step, step: "soak", method: "chlorine" },
		{ ...step, step: "boil", method: "boiling" },
	] as const;
	const kinds = methods.map((each) => ({ methods: each, pieces: [] }));
	expect(answerOf(stepsDone, { steps, kinds }).map((each) => each.step)).toEqual(names);
});
