import { expect, test } from "vitest";
import { ofEach } from "../../src/core/ofEach.ts";

test("what stands there several times is worked out once, and stands there as often", () => {
	const asked: string[] = [];
	const lengths = ofEach(["wash", "dry", "wash", "wash", "dry"], (word) => {
		asked.push(word);
		return word.length;
	});
	expect(lengths).toEqual([4, 3, 4, 4, 3]);
	expect(asked).toEqual(["wash", "dry"]);
});

test("nothing known of a thing is known too, and nothing comes of nothing", () => {
	let times = 0;
	const of = () => void times++;
	expect(ofEach(["a", "a"], of)).toEqual([undefined, undefined]);
	expect(times).toBe(1);
	expect(ofEach([], of)).toEqual([]);
});
