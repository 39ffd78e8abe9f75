import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import type { WorkbookPage } from "./workbookPage.ts";

const axe = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");

/** The rules that look at colours: all that can differ where only the scheme of colours does. */
export const OF_COLOURS = ["color-contrast", "link-in-text-block"];

/** What axe finds wrong on the page as it is. */
export async function axeViolations(
	{ page }: Pick<WorkbookPage, "page">,
	rules?: readonly string[],
): Promise<string[]> {
	if (!(await page.evaluate(() => "axe" in window))) await page.evaluate(axe);
	return page.evaluate(
		async (only) => {
			const { axe } = window as unknown as { axe: typeof import("axe-core") };
			const found = await axe.run(document, only ? { runOnly: only } : {});
			return found.violations.map(
				({ id, nodes }) => `${id}: ${nodes.map((n) => n.html).join(" | ")}`,
			);
		},
		rules as string[] | undefined,
	);
}
