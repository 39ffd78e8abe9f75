import { expect, test } from "vitest";
import { frenchWords } from "../../src/build/stick/words/frenchWords.ts";
import { catalogueOf } from "../../src/messages/catalogueOf.ts";
import { demoWordsOf } from "../../src/messages/demo/demoWordsOf.ts";

/** Units before which no line breaks. */
const UNITS = "%|°C|mg/L|g/L|g/mol|mol/L|mL|mg|kg|kJ|kWh|kW|ppm|min|Mo|g|L|h|m";

interface Rule {
	readonly rule: string;
	readonly wrong: RegExp;
	/** Texts that break it. */
	readonly broken: readonly string[];
}

const rules: readonly Rule[] = [
	{ rule: "apostrophes are typographic", wrong: /'/, broken: ["l'eau"] },
	{ rule: "quotes are guillemets", wrong: /["“”]/, broken: ['"prêt"', "“prêt”"] },
	{
		rule: "within guillemets stand narrow no-break spaces",
		wrong: /«(?!\u202f)|(?<!\u202f)»/,
		broken: ["« prêt\u202f»", "«\u202fprêt\u00a0»", "«prêt»"],
	},
	{
		rule: "before ; ! ? stands a narrow no-break space",
		wrong: /(?<!\u202f)[;!?]/,
		broken: ["prêt ; testé", "prêt?", "prêt\u00a0!"],
	},
	{
		rule: "before a colon stands a no-break space",
		wrong: /(?<!\u00a0):(?=\s|$)/,
		broken: ["Prêt : oui", "Prêt: oui", "Prêt\u202f:"],
	},
	{
		rule: "before a unit stands a no-break space",
		wrong: new RegExp(`[\\d}][ \\u202f]?(?:${UNITS})(?![\\p{L}\\d/’])`, "u"),
		broken: ["0,5 %", "{0} mL", "10\u202fmin", "5g"],
	},
	{ rule: "decimals have a comma", wrong: /\d\.\d/, broken: ["0.5\u00a0%"] },
	{
		rule: "thousands are parted by a narrow no-break space",
		wrong: /\d[ \u00a0]\d{3}(?!\d)/,
		broken: ["sur 1 000", "1\u00a0000"],
	},
	{ rule: "three points are one sign", wrong: /\.\.\./, broken: ["Attendez..."] },
	{
		rule: "no space is doubled or left over",
		wrong: /\S {2}|[ \u00a0\u202f]$/m,
		broken: ["prêt  à", "prêt "],
	},
];

/** Titles of others, section numbers and a formula: they are written as they are. */
const asTheyAre = [
	"Global Health: Science and Practice",
	"Sec. 525.825",
	"Handbook 3.2",
	"vaccination 5.2.5",
	"÷ k!",
	'"…"',
];

const stick = Object.values(frenchWords).map((words) =>
	typeof words === "string"
		? words
		: words("1", { folder: "2\u00a0Mo", zip: "1\u00a0Mo" }, (name: string) => name),
);
const texts = [
	...catalogueOf("fr").values(),
	...Object.values(demoWordsOf("fr")).flatMap((words) => Object.values(words)),
	...stick,
];

test.each(rules)("in French $rule", ({ wrong, broken }) => {
	expect(broken.filter((text) => !wrong.test(text))).toEqual([]);
	const free = (text: string) => asTheyAre.reduce((rest, name) => rest.replace(name, "·"), text);
	expect(texts.filter((text) => text !== "\u202f; " && wrong.test(free(text)))).toEqual([]);
});

test("what is written as it is stands somewhere", () => {
	expect(asTheyAre.filter((name) => !texts.some((text) => text.includes(name)))).toEqual([]);
});

test("a message and its French have as many lines", () => {
	const lines = (text: string) => text.split("\n").length;
	const uneven = [...catalogueOf("fr")].filter(
		([message, words]) => lines(message) !== lines(words),
	);
	expect(uneven).toEqual([]);
});
