import type { BrowserContext, Page } from "playwright-core";

/**
 * Stands in for the browser's windows for files: whoever is asked answers with a file of
 * the page's own disk, which is a real one, shared by all windows of a context.
 *
 * @param name what the person answers; without it the name that was proposed
 */
export async function answerFilePickers(context: BrowserContext): Promise<void> {
	await context.addInitScript(() => {
		const asked: string[] = [];
		const file = async (name: string, create: boolean) => {
			const answer = sessionStorage.getItem("answer");
			if (answer === "(closed)") throw new DOMException("closed", "AbortError");
			if (answer === "(not allowed)") throw new DOMException("not here", "SecurityError");
			const disk = await navigator.storage.getDirectory();
			return disk.getFileHandle(answer ?? name, { create });
		};
		Object.assign(globalThis, {
			asked,
			showSaveFilePicker: async ({ suggestedName }: { suggestedName: string }) => {
				asked.push(suggestedName);
				return file(suggestedName, true);
			},
			showOpenFilePicker: async () => [await file("", false)],
		});
	});
}

/** What the person answers to the next questions of a window; undefined: the proposed name. */
export async function answer(page: Page, name: string | undefined): Promise<void> {
	await page.evaluate((words) => {
		if (words === undefined) sessionStorage.removeItem("answer");
		else sessionStorage.setItem("answer", words);
	}, name);
}

/** The names proposed so far by this window, question by question. */
export function asked(page: Page): Promise<string[]> {
	return page.evaluate(() => [...(globalThis as unknown as { asked: string[] }).asked]);
}

/** Bytes of a file on the page's disk. */
export async function fileOf(page: Page, name: string): Promise<Uint8Array> {
	const bytes = await page.evaluate(async (wanted) => {
		const disk = await navigator.storage.getDirectory();
		const file = await (await disk.getFileHandle(wanted)).getFile();
		return [...new Uint8Array(await file.arrayBuffer())];
	}, name);
	return new Uint8Array(bytes);
}

/** Puts a file on the page's disk, as another program would. */
export async function putFile(page: Page, name: string, bytes: Uint8Array): Promise<void> {
	await page.evaluate(
		async ([wanted, content]) => {
			const disk = await navigator.storage.getDirectory();
			const stream = await (await disk.getFileHandle(wanted, { create: true })).createWritable();
			await stream.write(new Uint8Array(content));
			await stream.close();
		},
		[name, [...bytes]] as const,
	);
}

export async function removeFile(page: Page, name: string): Promise<void> {
	await page.evaluate(async (wanted) => {
		await (await navigator.storage.getDirectory()).removeEntry(wanted);
	}, name);
}
