import { describe, expect, test } from "vitest";
import { clockList } from "../../../src/core/values/clockList.ts";

const kind = clockList();

describe("clock times of a day", () => {
	test.each<[string, number[]]>([
		["", []],
		["  ", []],
		["03:10", [190]],
		["03:10 14:25", [190, 865]],
		["03:10, 14:25", [190, 865]],
		[" 00:00\t23:59 ", [0, 1439]],
		[Array.from({ length: 500 }, () => "07:30").join(" "), Array(500).fill(450)],
		["3:10 am, 2:25 PM 11:05 p.m.", [190, 865, 1385]],
		["7h30 15h00 21h", [450, 900, 1260]],
		[`03:10${" ".repeat(4990)}14:25`, [190, 865]],
	])("%j is read", (text, minutes) => {
		expect(kind.schema.parse(text)).toEqual(minutes);
	});

	test.each([
		["no time", "morning"],
		["one of several is none", "03:10 25:00"],
		["more times than births a day can be", Array.from({ length: 501 }, () => "7:30").join(" ")],
		["two times far apart", `03:10${" ".repeat(4991)}14:25`],
		["a text longer than so many times", "03:10".padEnd(6000, " 03:10")],
	])("%s is refused in words", (_, text) => {
		const read = kind.schema.safeParse(text);
		expect(read.success).toBe(false);
		expect(read.error?.issues[0]?.message).toBe(kind.allowed);
	});

	test("they are written as they are read", () => {
		expect(kind.write([190, 865])).toBe("03:10 14:25");
		expect(kind.write([])).toBe("");
	});
});
