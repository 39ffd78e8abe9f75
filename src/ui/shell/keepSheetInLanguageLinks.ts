/** The link to the other language leads to the sheet that is open. */
export function keepSheetInLanguageLinks(): void {
	for (const link of document.querySelectorAll<HTMLAnchorElement>("a[data-language]"))
		link.hash = location.hash;
}
