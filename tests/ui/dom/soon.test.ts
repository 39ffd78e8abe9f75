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
	await vi.waitFor(() => expect(drawing.at(-1)).toBe(false));
	// What would be drawn once too often has its turn.
	await new Promise((done) => setTimeout(done));
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

	test("is done in parts where it says so, before what waits behind it", async () => {
		const done: string[] = [];
		let parts = 3;
		soon(element(), () => {
			done.push(`part ${parts}`);
			parts -= 1;
			return parts > 0;
		});
		soon(element(), () => done.push("behind"));
		await painted();
		expect(done).toEqual(["part 3", "part 2", "part 1", "behind"]);
		expect(drawing.at(-1)).toBe(false);
	});

	test("lets a key have its turn between two parts", async () => {
		const done: string[] = [];
		let parts = 3;
		soon(element(), () => {
			const until = performance.now() + 10;
			while (performance.now() < until);
			setTimeout(() => done.push("key"));
			done.push("part");
			parts -= 1;
			return parts > 0;
		});
		frame?.();
		await vi.waitFor(() => expect(parts).toBe(0));
		expect(done.slice(0, 3)).toEqual(["part", "key", "part"]);
		expect(drawing.at(-1)).toBe(false);
	});

	test("a piece asked for anew while it goes on is done as it was asked for last", async () => {
		const [done, own]: [string[], Element] = [[], element()];
		soon(own, () => {
			done.push("before");
			soon(own, () => done.push("anew"));
			return true;
		});
		await painted();
		expect(done).toEqual(["before", "anew"]);
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
