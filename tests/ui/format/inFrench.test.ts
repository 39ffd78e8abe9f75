import { expect, test, vi } from "vitest";
import { say } from "../../../src/core/say.ts";
import { counted } from "../../../src/ui/format/counted.ts";
import { daysInWords } from "../../../src/ui/format/daysInWords.ts";
import { shownNumber, shownPlain } from "../../../src/ui/format/shownNumber.ts";

vi.mock("../../../src/core/language.ts", async (original) => {
	const { decimalSignOf } = await original<typeof import("../../../src/core/language.ts")>();
	return { language: "fr", decimalSign: decimalSignOf("fr"), decimalSignOf };
});

// The words are put in their place by the build; the days end with a point in French.
vi.mock("../../../src/ui/format/shownDay.ts", () => ({
	shownDay: (day: string) => (day === "2027-04-02" ? "ven. 2 avr." : "mer. 3 mars"),
}));

test("numbers have a comma, and the same thin space between thousands as in English", () => {
	expect(shownNumber(1234567.891, 1)).toBe("1\u202f234\u202f567,9");
	expect(shownNumber(-1234.5, 1)).toBe("-1\u202f234,5");
	expect(shownNumber(0.00024, 3)).toBe("<0,001");
	expect(shownPlain(999.5)).toBe("999,5");
});

test("a number within a sentence has a comma, and what is no number stays as it is", () => {
	expect(say`${2.5} L, ${"kits.csv"}`).toBe("2,5 L, kits.csv");
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

test.each([
	["Périmé le 2027-03-03.", "Périmé le mer. 3 mars."],
	["Périmé le 2027-04-02.", "Périmé le ven. 2 avr."],
	["Du 2027-03-03 au 2027-04-02. À commander.", "Du mer. 3 mars au ven. 2 avr. À commander."],
	["Du 2027-04-02 au 2027-03-03", "Du ven. 2 avr. au mer. 3 mars"],
])("the days of “%s” in words: “%s”", (sentence, words) => {
	expect(daysInWords(sentence)).toBe(words);
});
