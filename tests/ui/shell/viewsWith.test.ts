import { expect, test } from "vitest";
import { questions } from "../../../src/ui/pages.ts";
import { listedAs, viewsWith } from "../../../src/ui/shell/viewsWith.ts";

const lists = questions.flatMap(({ pages, more }) => [pages, more]);

test("the views of one page stand side by side in the list of pages, the one that is listed first", () => {
	let grouped = 0;
	for (const list of lists) {
		const files = list.map(({ file }) => file);
		for (const file of files.filter((each) => listedAs(each) === each)) {
			const views = viewsWith(file).map((view) => view.file);
			const at = files.indexOf(file);
			expect(files.slice(at, at + views.length)).toEqual(views);
			grouped += views.length;
		}
		for (const file of files) expect(files).toContain(listedAs(file));
	}
	expect(grouped).toBeGreaterThan(5);
});

test("a page with one view has no switch", () => {
	expect(viewsWith("unit.csv")).toEqual([]);
	expect(listedAs("unit.csv")).toBe("unit.csv");
});
