import { expect, test } from "vitest";
import { inLanguage, translated } from "../../src/messages/inLanguage.ts";
import { messagesIn } from "../../src/messages/messagesIn.ts";

const catalogue = new Map([
	["Open", "Ouvrir"],
	["{0} of {1}", "sur {1}, {0}"],
	["kits: {0}", "kits : {0}"],
	["a `mark` and ${sign}", "un `signe` et ${rien}"],
]);
const stop = (message: string) => {
	throw new Error(`no translation of "${message}"`);
};
const french = (source: string) => translated(source, catalogue, stop);

test.each([
	["const a = say`Open`;", "const a = say`Ouvrir`;"],
	["say`${kits} of ${all}`", "say`sur ${all}, ${kits}`"],
	["say`kits: ${say`${one} of ${two}`}`", "say`kits : ${say`sur ${two}, ${one}`}`"],
	["f(say`Open`, say`Open`)", "f(say`Ouvrir`, say`Ouvrir`)"],
	["other`Open` + `Open`", "other`Open` + `Open`"],
])("%s becomes %s", (source, wanted) => {
	expect(french(source)).toBe(wanted);
});

const unreviewed = (source: string) => translated(source, catalogue, stop, true);

test.each([
	["say.safety`Open`", "say`Ouvrir`", "say`Ouvrir\u2002/\u2002Open`"],
	["say`Open`", "say`Ouvrir`", "say`Ouvrir`"],
	[
		"say.safety`kits: ${say`${one} of ${two}`}`",
		"say`kits : ${say`sur ${two}, ${one}`}`",
		"say`kits : ${say`sur ${two}, ${one}`}\u2002/\u2002kits: ${say`${one} of ${two}`}`",
	],
])(
	"%s becomes %s, and with the English beside it where nobody has reviewed",
	(source, alone, both) => {
		expect(french(source)).toBe(alone);
		expect(unreviewed(source)).toBe(both);
	},
);

test("signs of the language of programs stay signs", () => {
	expect(french("say`a \\`mark\\` and \\${sign}`")).toBe("say`un \\`signe\\` et \\${rien}`");
});

test("a message without a translation stops a release", () => {
	expect(() => french("say`Close`")).toThrow('no translation of "Close"');
});

test("while developing it stays English, with its values in French, and is named", () => {
	const missing: string[] = [];
	const source = "say`shut \\`it\\`: ${say`${one} of ${two}`}`";
	const out = translated(source, catalogue, (message) => missing.push(message));
	expect(out).toBe("say`shut \\`it\\`: ${say`sur ${two}, ${one}`}`");
	expect(missing).toEqual(["shut `it`: {0}"]);
});

test("the plugin stops a release and lets a development build pass", () => {
	const warned: string[] = [];
	const transform = (isRelease: boolean) =>
		(inLanguage("fr", isRelease).transform as (source: string, file: string) => unknown).call(
			{ warn: (text: string) => warned.push(text) } as never,
			"say`Nobody says this.`",
			"/src/core/kits/none.ts",
		);
	expect(() => transform(true)).toThrow("none.ts");
	expect(transform(false)).toBe("say`Nobody says this.`");
	expect(warned).toEqual(['/src/core/kits/none.ts: no translation of "Nobody says this."']);
});

test("a translation with a value too many stops the build", () => {
	const wrong = new Map([["Open", "Ouvrir {0}"]]);
	expect(() => translated("say`Open`", wrong, stop)).toThrow("has no value 0");
});

test("messages are found with their values in order", () => {
	const found = messagesIn("say`${a} and ${say`b`} in ${c}`", "page.ts");
	expect(found.map(({ message }) => message)).toEqual(["{0} and {1} in {2}", "b"]);
});
