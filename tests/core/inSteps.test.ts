import { describe, expect, test } from "vitest";
import { InSteps } from "../../src/core/inSteps.ts";

describe("what is worked out in steps", () => {
	test("is worked out a step at a time, once, and then kept", () => {
		const done: string[] = [];
		const work = new InSteps(function* () {
			done.push("first");
			yield;
			done.push("second");
			return { done };
		});
		expect(done).toEqual([]);
		expect(work.goOn()).toBe(true);
		expect(done).toEqual(["first"]);
		expect(work.goOn()).toBe(false);
		expect(work.made.done).toEqual(["first", "second"]);
		expect(work.goOn()).toBe(false);
		expect(done).toHaveLength(2);
	});

	test("is worked out to its end for whoever asks for it", () => {
		let steps = 0;
		const work = new InSteps(function* () {
			for (; steps < 3; steps++) yield;
			return { steps };
		});
		work.goOn();
		expect(work.made).toEqual({ steps: 3 });
	});

	test("fails each time it is asked for, never with half of it", () => {
		const work = new InSteps(function* (): Generator<void, object> {
			yield;
			throw new Error("no");
		});
		expect(work.goOn()).toBe(true);
		expect(() => work.goOn()).toThrow("no");
		expect(() => work.made).toThrow("no");
	});
});
