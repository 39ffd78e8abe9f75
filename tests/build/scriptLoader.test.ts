import { describe, expect, test } from "vitest";
import { type Scripts, scriptLoader } from "../../src/build/scriptLoader.ts";

interface Asked {
	src: string;
	onload: () => void;
	onerror: () => void;
	remove(): void;
}

/** A page in which a script "arrives" when the test says so, and the loader that works in it. */
function pageOf() {
	const asked: Asked[] = [];
	const page = {
		createElement: (): Asked => ({ src: "", onload() {}, onerror() {}, remove() {} }),
		head: { append: (script: Asked) => void asked.push(script) },
	};
	return { asked, scripts: scriptLoader(page) };
}

async function arrive(script: Asked | undefined, scripts: Scripts, needs: string[], value: number) {
	scripts.define((script?.src ?? "").replace("./", ""), needs, (_require, exports) => {
		Object.assign(exports, { value });
	});
	script?.onload();
	await Promise.resolve();
}

describe("further scripts", () => {
	test("a part is brought once, however often it is asked for, and runs once", async () => {
		const { asked, scripts } = pageOf();
		const both = [scripts.load("a.js"), scripts.load("a.js")];
		expect(asked.map(({ src }) => src)).toEqual(["./a.js"]);
		await arrive(asked[0], scripts, [], 1);
		await Promise.all(both);
		expect(scripts.require("./a.js")).toEqual({ value: 1 });
		expect(scripts.require("./a.js")).toBe(scripts.require("./a.js"));
	});

	test("what a part needs is brought before it is there", async () => {
		const { asked, scripts } = pageOf();
		let isThere = false;
		const loading = scripts.load("a.js").then(() => {
			isThere = true;
		});
		await arrive(asked[0], scripts, ["b.js"], 1);
		await new Promise((later) => setTimeout(later));
		expect(isThere).toBe(false);
		expect(asked.map(({ src }) => src)).toEqual(["./a.js", "./b.js"]);
		await arrive(asked[1], scripts, [], 2);
		await loading;
		expect(scripts.require("./b.js")).toEqual({ value: 2 });
	});

	test("one that cannot be fetched, or is another file, is refused, and asked for again the next time", async () => {
		const { asked, scripts } = pageOf();
		const first = scripts.load("a.js");
		asked[0]?.onerror();
		await expect(first).rejects.toThrow("a.js could not be loaded");
		const second = scripts.load("a.js");
		asked[1]?.onload();
		await expect(second).rejects.toThrow("a.js holds no part");
		const third = scripts.load("a.js");
		await arrive(asked[2], scripts, [], 3);
		await third;
		expect(scripts.require("./a.js")).toEqual({ value: 3 });
	});

	test("where what a part needs cannot be fetched, the part is refused, and only that is asked for again", async () => {
		const { asked, scripts } = pageOf();
		const first = scripts.load("a.js");
		await arrive(asked[0], scripts, ["b.js"], 1);
		await new Promise((later) => setTimeout(later));
		asked[1]?.onerror();
		await expect(first).rejects.toThrow("b.js could not be loaded");
		const second = scripts.load("a.js");
		await new Promise((later) => setTimeout(later));
		expect(asked.map(({ src }) => src)).toEqual(["./a.js", "./b.js", "./b.js"]);
		await arrive(asked[2], scripts, [], 2);
		await second;
		expect(scripts.require("./a.js")).toEqual({ value: 1 });
	});

	test("it is written into the page as it stands, so it uses nothing from outside itself", async () => {
		const asked: Asked[] = [];
		const page = {
			createElement: (): Asked => ({ src: "", onload() {}, onerror() {}, remove() {} }),
			head: { append: (script: Asked) => void asked.push(script) },
		};
		const alone = new Function(`return (${scriptLoader})`)() as typeof scriptLoader;
		const scripts = alone(page);
		const loading = scripts.load("a.js");
		await arrive(asked[0], scripts, [], 4);
		await loading;
		expect(scripts.require("./a.js")).toEqual({ value: 4 });
	});
});
