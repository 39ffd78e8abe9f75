import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import type { WorkbookPage } from "./workbookPage.ts";

const axe = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");

/** What axe finds wrong on the page as it is; the page has to be opened with `bypassCSP`. */
export async function axeViolations({ page }: WorkbookPage): Promise<string[]> {
	await page.evaluate(axe);
	return page.evaluate(async () => {
		const { axe } = window as unknown as { axe: typeof import("axe-core") };
		const found = await axe.run(document);
		return found.violations.map(
			({ id, nodes }) => `${id}: ${nodes.map((n) => n.html).join(" | ")}`,
		);
	});
}
