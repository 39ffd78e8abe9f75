import { globSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";

const root = join(import.meta.dirname, "../..");
/** The script of a page, its tags, and what is written as it stands in every language: code. */
const NOT_TEXT = /^---[\s\S]*?---|<script[\s\S]*?<\/script>|<code>[\s\S]*?<\/code>|<[^>]*>/g;

const textOf = (page: string) =>
	withoutExpressions(page.replaceAll("=>", "").replace(NOT_TEXT, " ")).match(/\p{L}{2,}/gu) ?? [];

/** What stands outside of all braces. */
function withoutExpressions(page: string): string {
	const inner = page.replace(/\{[^{}]*\}/g, " ");
	return inner === page ? page : withoutExpressions(inner);
}

test("a text that stands in a page without say is seen", () => {
	const page =
		"---\nconst a = 1;\n---\n<h2>Keys</h2>\n{list.map(() => <p title={a}>{say`Words`} end</p>)}";
	expect(textOf(page)).toEqual(["Keys"]);
});

test("pages have no text of their own beside the program's name", () => {
	const pages = globSync("src/{components,layouts,pages}/*.astro", { cwd: root });
	expect(pages.length).toBeGreaterThan(8);
	const unsaid = pages.map((page) => [
		page,
		textOf(readFileSync(join(root, page), "utf8")).filter((word) => word !== "Basinbook"),
	]);
	expect(unsaid.filter(([, words]) => (words?.length ?? 0) > 0)).toEqual([]);
});
