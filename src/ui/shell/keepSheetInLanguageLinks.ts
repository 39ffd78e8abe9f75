/** The links to the other languages lead to the sheet that is open. */
export function keepSheetInLanguageLinks(): void {
	for (const link of document.querySelectorAll<HTMLAnchorElement>(".languages a"))
		link.hash = location.hash;
}
