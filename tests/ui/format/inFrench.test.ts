import { expect, test, vi } from "vitest";
import { counted } from "../../../src/ui/format/counted.ts";
import { shownNumber, shownPlain } from "../../../src/ui/format/shownNumber.ts";

vi.mock("../../../src/core/language.ts", async (original) => {
	const { decimalSignOf } = await original<typeof import("../../../src/core/language.ts")>();
	return { language: "fr", decimalSign: decimalSignOf("fr"), decimalSignOf };
});

test("numbers have a comma, and the same thin space between thousands as in English", () => {
	expect(shownNumber(1234567.891, 1)).toBe("1\u202f234\u202f567,9");
	expect(shownNumber(-1234.5, 1)).toBe("-1\u202f234,5");
	expect(shownNumber(0.00024, 3)).toBe("<0,001");
	expect(shownPlain(999.5)).toBe("999,5");
});

test.each([
	[0, "0 kit"],
	[1, "1 kit"],
	[1.5, "1,5 kit"],
	[2, "2 kits"],
	[1640, "1\u202f640 kits"],
	[1_000_000, "1\u202f000\u202f000 kits"],
])("%d takes the form that French has for it", (count, words) => {
	expect(counted(count, "kit")).toBe(words);
});
