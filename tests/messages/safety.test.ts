import { globSync, readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { messagesIn } from "../../src/messages/messagesIn.ts";

const root = new URL("../../", import.meta.url).pathname;
const saidIn = (file: string) => messagesIn(readFileSync(root + file, "utf8"), file);

/** Where every text is one on which safety hangs … */
const PLACES = "src/ui/subjects/{*/*Cautions,mixing/{firstAid,mixSteps},labels/{*Label,label}}.ts";

/** … but for what is only put into others, or says where something was taken from. */
const PARTS = [
	"Afterwards: {0}",
	"discard time",
	"discard time ({0} hours later at most)",
	"going by its label",
	"lot {0}",
	"{0} of {1}, {2}",
	"{0} then {1}",
];

test("cautions, mixing steps, labels and first aid keep their English beside them where nobody has reviewed", () => {
	const files = globSync(PLACES, { cwd: root });
	expect(files.length).toBeGreaterThan(9);
	const plain = files.flatMap((file) => saidIn(file).filter(({ isSafety }) => !isSafety));
	expect([...new Set(plain.map(({ message }) => message))].sort()).toEqual(PARTS);
});

test("so does the caution of every calculation", () => {
	const files = globSync("src/core/**/*.ts", { cwd: root });
	const cautions = files.flatMap((file) =>
		[...readFileSync(root + file, "utf8").matchAll(/\bcaution\b[:\s=]*(say[^`]*)`/gi)].map(
			([, tag]) => `${file}: ${tag}`,
		),
	);
	expect(cautions.length).toBeGreaterThan(10);
	expect(cautions.filter((found) => !found.endsWith(": say.safety"))).toEqual([]);
});

test("so does what says how a solution is made and used, wherever it stands", () => {
	const MEASURED =
		/water, then|the product into the water|only the clear liquid(\.|$)|Let the solution settle|Soak in at/;
	const found = globSync("src/{core,ui}/**/*.ts", { cwd: root })
		.flatMap(saidIn)
		.filter(({ message }) => MEASURED.test(message));
	expect(found.length).toBeGreaterThan(12);
	expect(found.filter(({ isSafety }) => !isSafety).map(({ message }) => message)).toEqual([]);
});
