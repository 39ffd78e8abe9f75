import type { WorkbookPage } from "./workbookPage.ts";

interface Dropped {
	readonly name: string;
	readonly text?: string;
	readonly bytes?: Uint8Array;
}

/** Drops files on the page, wherever the pointer is. */
export async function drop({ page }: WorkbookPage, files: readonly Dropped[]): Promise<void> {
	const given = files.map(({ name, text = "", bytes }) => ({
		name,
		text,
		codes: bytes && [...bytes],
	}));
	await page.evaluate((all) => {
		const dataTransfer = new DataTransfer();
		for (const { name, text, codes } of all)
			dataTransfer.items.add(new File([codes ? new Uint8Array(codes) : text], name));
		document.body.dispatchEvent(
			new DragEvent("drop", { dataTransfer, bubbles: true, cancelable: true }),
		);
	}, given);
}
