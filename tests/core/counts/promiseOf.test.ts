import { expect, test } from "vitest";
import { derive, type Figure } from "../../../src/core/calculation.ts";
import { promiseOf } from "../../../src/core/counts/promiseOf.ts";
import { oneRound } from "../../../src/core/rounds/roundsOfDay.ts";
import { useExpected, useSetAside } from "../../../src/core/stock/useSetAside.ts";
import { expectWithin } from "../../expectWithin.ts";
import { figure, missing } from "../answerOf.ts";

const inputsOf = (inputs: object) =>
	Object.fromEntries(Object.entries(inputs).map(([key, value]) => [key, figure(value)])) as never;

test("a figure set aside says how surely it is enough; others promise nothing", () => {
	const aside = derive(useSetAside, inputsOf(useSetAside.example?.inputs ?? {}));
	const promise = promiseOf(aside);
	expect(promise?.asked).toBe(0.95);
	// Two pieces a kit: 12 are six kits, of a mean of three.
	expectWithin(promise?.enough, 0.966491, 1e-6, "chance");
	expect(promise?.less?.amount).toBe(10);
	expectWithin(promise?.less?.enough, 0.916082, 1e-6, "chance");
	const never = derive(
		useSetAside,
		inputsOf({ ...useSetAside.example?.inputs, days: [oneRound(0)] }),
	);
	expect(promiseOf(never)).toMatchObject({ enough: 1, less: undefined });
	expect(
		promiseOf(derive(useExpected, inputsOf(useExpected.example?.inputs ?? {}))),
	).toBeUndefined();
	expect(promiseOf(figure(3))).toBeUndefined();
	expect(promiseOf(missing("not-given"))).toBeUndefined();
	const words = { ...aside, outcome: { ok: true, value: "twelve" } } as Figure<unknown>;
	expect(promiseOf(words)).toBeUndefined();
});
