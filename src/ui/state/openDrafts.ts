const PREFIX = "basinbook window ";

let shown = false;

/** Lets the other windows know, for as long as this one lives, that it is writing a draft. */
export function showAsOpen(draft: string): void {
	if (shown) return;
	shown = true;
	const asLongAsThePage = () => new Promise<void>(() => undefined);
	navigator.locks?.request(PREFIX + draft, asLongAsThePage).catch(() => undefined);
}

/** The drafts that windows are writing now; none where the browser does not tell. */
export async function openDrafts(): Promise<ReadonlySet<string>> {
	const locks = await navigator.locks?.query().catch(() => undefined);
	return new Set(locks?.held?.map(({ name = "" }) => name.replace(PREFIX, "")));
}
