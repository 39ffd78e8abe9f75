import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import type { WorkbookPage } from "./workbookPage.ts";

const sample = join(import.meta.dirname, "../../sample-csv");

/** What is to be different from the demo. */
export interface Changes {
	/** Settings replaced or added; "" leaves one blank. */
	readonly settings?: Readonly<Record<string, string>>;
	/** Whole sheets replaced or added. */
	readonly sheets?: Readonly<Record<string, string>>;
}

/** Drops the demo with changes on the page, as a person drops a workbook's files. */
export async function dropDemo(
	workbook: WorkbookPage,
	{ settings = {}, sheets = {} }: Changes,
): Promise<void> {
	const names = readdirSync(sample).filter((name) => name.endsWith(".csv"));
	const texts = Object.fromEntries(
		names.map((name) => [name, readFileSync(join(sample, name), "utf8")]),
	);
	const files = {
		...texts,
		"unit.csv": withSettings(texts["unit.csv"] ?? "", settings),
		...sheets,
	};
	await workbook.page.evaluate((all) => {
		const dataTransfer = new DataTransfer();
		for (const [name, text] of Object.entries(all)) dataTransfer.items.add(new File([text], name));
		document.body.dispatchEvent(
			new DragEvent("drop", { dataTransfer, bubbles: true, cancelable: true }),
		);
	}, files);
	await workbook.page.locator("#told p", { hasText: /opened|ouvert|aberto/ }).waitFor();
}

function withSettings(text: string, settings: Readonly<Record<string, string>>): string {
	const kept = text
		.trim()
		.split("\n")
		.filter((line) => !Object.hasOwn(settings, line.split(",")[0] ?? ""));
	const added = Object.entries(settings).map(([key, value]) => `${key},${value}`);
	return [...kept, ...added, ""].join("\n");
}
