import { expect, test } from "vitest";
import { Findings, type Part } from "../../../src/core/plan/findings.ts";
import { plan } from "../../../src/core/plan/plan.ts";
import { advice, nowhere, problem } from "../../../src/core/problem.ts";
import { smallUnit, unitWith } from "../smallUnit.ts";

const words = (message: string) => ({ code: message, received: "", allowed: "", message });
const typed = problem(nowhere, words("typed"));
const needed = problem(nowhere, words("needed"));
const heeded = advice(nowhere, words("heeded"));

const findings = (...parts: readonly Part[]) => new Findings([typed], parts.values());

test("what was typed is known at once, the rest part by part, errors before advice and each once", () => {
	const found = findings({ problems: [heeded] }, { problems: [needed, typed] });
	expect(found.found).toEqual([typed]);
	expect([found.goOn(), found.found]).toEqual([true, [typed]]);
	expect([found.goOn(), found.goOn(), found.goOn()]).toEqual([true, false, false]);
	expect(found.found).toEqual([typed, needed, heeded]);
	expect(found.problems).toBe(found.found);
});

test.each([
	["a number it waits for has no answer", [{ problems: [needed], isNeeded: true }], false],
	["that number needs none", [{ problems: [heeded], isNeeded: true }], true],
	["another has no answer", [{ problems: [needed] }], true],
] as const)("whoever asks has all of them: where %s", (_, parts, made) => {
	expect(findings(...parts).made).toBe(made);
	expect(findings(...parts).problems).toHaveLength(2);
});

test("a mistake of this program stays one: no list is whole that is not", () => {
	const failing = new Findings(
		[],
		(function* (): Generator<Part> {
			yield { problems: [heeded] };
			throw new Error("a mistake of ours");
		})(),
	);
	expect(failing.goOn()).toBe(true);
	for (const ask of [() => failing.goOn(), () => failing.problems, () => failing.made])
		expect(ask).toThrow("a mistake of ours");
});

test.each(["", "2027-13-01"])("of a plan from “%s” nothing is worked out", (plan_start) => {
	const made = plan(unitWith({ plan_start }));
	expect([made.goOn(), made.made]).toEqual([false, false]);
	expect(made.found).toBe(made.problems);
});

test("a plan looked at a part at a time is that of one asked for at once", () => {
	const [slowly, atOnce] = [plan(smallUnit()), plan(smallUnit())];
	let parts = 0;
	while (slowly.goOn()) parts += 1;
	expect(parts).toBeGreaterThan(20);
	expect(slowly.found).toEqual(atOnce.problems);
	expect(slowly.made).toBe(atOnce.made);
});
