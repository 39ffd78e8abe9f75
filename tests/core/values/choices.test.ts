import { describe, expect, test } from "vitest";
import { methods } from "../../../src/core/methods/method.ts";
import { choices } from "../../../src/core/values/choices.ts";

const kind = choices(methods);

describe("several of a closed list", () => {
	test.each<[string, string[]]>([
		["", []],
		["boiling", ["boiling"]],
		["chlorine boiling", ["chlorine", "boiling"]],
		[" Steam, autoclave ;", ["steam", "autoclave"]],
		["boiling boiling", ["boiling"]],
		[" boiling   steam ; autoclave chlorine ", ["boiling", "steam", "autoclave", "chlorine"]],
		["steam, ,boiling", ["steam", "boiling"]],
		["single use, steam", ["single_use", "steam"]],
		["ébullition vapeur", ["boiling", "steam"]],
	])("%j is read", (text, codes) => {
		expect(kind.schema.parse(text)).toEqual(codes);
	});

	test.each(["fire", "boiling fire", "boiling, fire"])("%j is refused in words", (text) => {
		const read = kind.schema.safeParse(text);
		expect(read.error?.issues[0]?.message).toBe(kind.allowed);
	});

	test("they are written as they are read", () => {
		expect(kind.write(["steam", "single_use"])).toBe("steam single_use");
	});
});
