import { readdirSync, readFileSync } from "node:fs";
import { basename } from "node:path";
import { fileURLToPath } from "node:url";
import { expect, test } from "vitest";

const src = fileURLToPath(new URL("../src/", import.meta.url));

/** Named after their subject: sheets, settings, a subject's words and problems, what starts a program, and lists of a further script. */
const BY_SUBJECT = [
	/\/sheets\//,
	/\/settings\.ts$/,
	/(Words|Problems|Refusals)\.ts$/,
	/^pages\//,
	/^ui\/(onPages|pictures)\.ts$/,
	/\.d\.ts$/,
];
const EXPORT =
	/^export (?:async )?(?:abstract )?(?:function\*?|const|class|type|interface)\s+(\w+)/gm;

const files = readdirSync(src, { recursive: true, encoding: "utf8" })
	.map((file) => file.replaceAll("\\", "/"))
	.filter((file) => file.endsWith(".ts") && !BY_SUBJECT.some((rule) => rule.test(file)));

test.each(files)("%s is named after what it exports, or exports nothing", (file) => {
	const text = readFileSync(src + file, "utf8");
	const names = [...text.matchAll(EXPORT)].map(([, name = ""]) =>
		name.replaceAll("_", "").toLowerCase(),
	);
	if (names.length > 0) expect(names).toContain(basename(file, ".ts").toLowerCase());
});
