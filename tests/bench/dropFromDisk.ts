import type { WorkbookPage } from "../browser/workbookPage.ts";

/** Drops files on the page as they lie on the disk: the page gets their names, and their bytes when it asks. */
export async function dropFromDisk(
	{ page }: WorkbookPage,
	paths: readonly string[],
): Promise<void> {
	const field = await page.evaluateHandle(() => {
		const input = document.createElement("input");
		input.type = "file";
		input.multiple = true;
		return input;
	});
	await field.setInputFiles([...paths]);
	await field.evaluate((input) => {
		const dataTransfer = new DataTransfer();
		for (const file of input.files ?? []) dataTransfer.items.add(file);
		document.body.dispatchEvent(
			new DragEvent("drop", { dataTransfer, bubbles: true, cancelable: true }),
		);
	});
}
