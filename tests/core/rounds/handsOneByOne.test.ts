import { expect, test } from "vitest";
import {
	areAlwaysFree,
	handsAfterWater,
	handsOneByOne,
	minutesOneByOne,
} from "../../../src/core/rounds/handsOneByOne.ts";
import type { Step } from "../../../src/core/rounds/step.ts";
import { answerOf, refusalOf } from "../answerOf.ts";
import { wholeProblems } from "../wholeProblems.ts";

const steps: Step[] = [
	{ step: "wash", basis: "kit", minutes: 15, hands_on: "yes" },
	{ step: "soak", basis: "load", minutes: 20, hands_on: "no" },
	{ step: "rinse", basis: "kit", minutes: 5, hands_on: "yes" },
];

test.each([
	["yes", { people: 2, workMinutes: 20, aloneMinutes: 20 }],
	["no", { people: 2, workMinutes: 40, aloneMinutes: 0 }],
] as const)("with a kit in the soak left alone: %s", (soakAlone, hands) => {
	expect(answerOf(handsOneByOne, { steps, people: 2, soakAlone })).toEqual(hands);
	expect(answerOf(minutesOneByOne, { hands })).toBe(40);
	const waterMinutes = 300;
	expect(answerOf(handsAfterWater, { hands, waterMinutes })).toEqual({
		...hands,
		aloneMinutes: hands.aloneMinutes + 300,
	});
});

test("without steps nothing is known of any round", () => {
	const refused = refusalOf(handsOneByOne, { steps: [], people: 2, soakAlone: "no" });
	expect(wholeProblems(refused)).toMatchObject([
		{ code: "no-steps", received: "no steps", file: "steps.csv", line: null },
	]);
});

test.each([
	[Number.POSITIVE_INFINITY, 10, true],
	[2, 0, true],
	[2, 10, false],
])(
	"%d people with %d minutes of work on a kit: no kit ever waits: %j",
	(people, workMinutes, free) => {
		expect(areAlwaysFree({ people, workMinutes, aloneMinutes: 5 })).toBe(free);
	},
);
