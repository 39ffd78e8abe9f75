import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { expect, test } from "vitest";
import { judges } from "./judges.ts";

const root = fileURLToPath(new URL("../../", import.meta.url));
const read = (file: string) => readFileSync(root + file, "utf8");

test("tests that judge a broken core use only what stands in for the test library", () => {
	const standIns = [...read("tests/mutation/collected.ts").matchAll(/^export const (\w+)/gm)].map(
		([, name]) => name,
	);
	const strange = judges(root).flatMap((file) => {
		const [, names = ""] = /^import \{([^}]*)\} from "vitest"/m.exec(read(file)) ?? [];
		const used = names.split(",").map((name) => name.trim());
		return used
			.filter((name) => name && !standIns.includes(name))
			.map((name) => `${file}: ${name}`);
	});
	expect(judges(root).length).toBeGreaterThan(150);
	expect(strange).toEqual([]);
});
