import type { WorkbookPage } from "./workbookPage.ts";

/** Fills in fields of the store's form by their labels, and enters them. */
export async function enterInStore(
	workbook: WorkbookPage,
	fields: Record<string, string>,
): Promise<void> {
	const { page } = workbook;
	for (const [label, value] of Object.entries(fields)) {
		const field = page.getByLabel(label, { exact: false }).first();
		if ((await field.evaluate((e) => e.tagName)) === "SELECT") await field.selectOption(value);
		else await field.fill(value);
	}
	await page.getByRole("button", { name: "Enter it", exact: true }).click();
}
