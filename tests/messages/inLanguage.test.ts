import { expect, test } from "vitest";
import { translated } from "../../src/messages/inLanguage.ts";
import { messagesIn } from "../../src/messages/messagesIn.ts";

const catalogue = new Map([
	["Open", "Ouvrir"],
	["{0} of {1}", "sur {1}, {0}"],
	["kits: {0}", "kits : {0}"],
	["a `mark` and ${sign}", "un `signe` et ${rien}"],
]);
const french = (source: string) => translated(source, "page.ts", catalogue);

test.each([
	["const a = say`Open`;", "const a = say`Ouvrir`;"],
	["say`${kits} of ${all}`", "say`sur ${all}, ${kits}`"],
	["say`kits: ${say`${one} of ${two}`}`", "say`kits : ${say`sur ${two}, ${one}`}`"],
	["f(say`Open`, say`Open`)", "f(say`Ouvrir`, say`Ouvrir`)"],
	["other`Open` + `Open`", "other`Open` + `Open`"],
])("%s becomes %s", (source, wanted) => {
	expect(french(source)).toBe(wanted);
});

test("signs of the language of programs stay signs", () => {
	expect(french("say`a \\`mark\\` and \\${sign}`")).toBe("say`un \\`signe\\` et \\${rien}`");
});

test("a message without a translation stops the build", () => {
	expect(() => french("say`Close`")).toThrow('no translation of "Close"');
});

test("a translation with a value too many stops the build", () => {
	const wrong = new Map([["Open", "Ouvrir {0}"]]);
	expect(() => translated("say`Open`", "page.ts", wrong)).toThrow("has no value 0");
});

test("messages are found with their values in order", () => {
	const found = messagesIn("say`${a} and ${say`b`} in ${c}`", "page.ts");
	expect(found.map(({ message }) => message)).toEqual(["{0} and {1} in {2}", "b"]);
});
