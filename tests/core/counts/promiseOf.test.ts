import { expect, test } from "vitest";
import { derive, type Figure } from "../../../src/core/calculation.ts";
import { promiseOf } from "../../../src/core/counts/promiseOf.ts";
import { useExpected, useSetAside } from "../../../src/core/stock/useSetAside.ts";
import { figure, missing } from "../answerOf.ts";

const inputsOf = (inputs: object) =>
	Object.fromEntries(Object.entries(inputs).map(([key, value]) => [key, figure(value)])) as never;

test("a figure set aside says how surely it is enough; others promise nothing", () => {
	const aside = derive(useSetAside, inputsOf(useSetAside.example?.inputs ?? {}));
	const promise = promiseOf(aside);
	expect(promise?.asked).toBe(0.95);
	expect(
		promiseOf(derive(useExpected, inputsOf(useExpected.example?.inputs ?? {}))),
	).toBeUndefined();
	expect(promiseOf(figure(3))).toBeUndefined();
	expect(promiseOf(missing("not-given"))).toBeUndefined();
	const words = { ...aside, outcome: { ok: true, value: "twelve" } } as Figure<unknown>;
	expect(promiseOf(words)).toBeUndefined();
});
