import { afterAll, beforeAll, describe, expect, test, vi } from "vitest";
import { hurry, soon } from "../../../src/ui/dom/soon.ts";

/** As much of an element as a piece of drawing needs. */
const element = (isConnected = true) => ({ isConnected }) as Element;
const drawing: boolean[] = [];
let frame: (() => void) | undefined;
let frames = 0;

beforeAll(() => {
	vi.stubGlobal("document", {
		body: { toggleAttribute: (_: string, on: boolean) => drawing.push(on) },
	});
	vi.stubGlobal("requestAnimationFrame", (work: () => void) => {
		frame = work;
		frames += 1;
	});
});
afterAll(() => vi.unstubAllGlobals());

const painted = async () => {
	frame?.();
	await new Promise((done) => setTimeout(done, 20));
};

describe("what is drawn after the cells", () => {
	test("waits for the paint, and is done in its order, each as it was asked for last", async () => {
		const [one, other] = [element(), element()];
		const done: string[] = [];
		frames = 0;
		soon(one, () => done.push("one, before"));
		soon(other, () => done.push("other"));
		soon(one, () => done.push("one"));
		expect(done).toEqual([]);
		expect(frames).toBe(1);
		expect(drawing.at(-1)).toBe(true);
		await painted();
		expect(done).toEqual(["other", "one"]);
		expect(drawing.at(-1)).toBe(false);
	});

	test("is not done for an element that has gone", async () => {
		const done: string[] = [];
		soon(element(false), () => done.push("gone"));
		await painted();
		expect(done).toEqual([]);
	});

	test("is done although what was to be drawn before it failed", async () => {
		const done: string[] = [];
		soon(element(), () => {
			throw new Error("a mistake of ours");
		});
		soon(element(), () => done.push("the next"));
		expect(hurry).toThrow("a mistake of ours");
		await painted();
		expect(done).toEqual(["the next"]);
		soon(element(), () => done.push("later"));
		await painted();
		expect(done).toEqual(["the next", "later"]);
	});

	test("is done at once in a hurry, with what it asks for itself, and not a second time", async () => {
		const done: string[] = [];
		soon(element(), () => {
			done.push("first");
			soon(element(), () => done.push("from the first"));
		});
		hurry();
		expect(done).toEqual(["first", "from the first"]);
		await painted();
		expect(done).toHaveLength(2);
	});
});
