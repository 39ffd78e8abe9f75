let upright: CSSStyleSheet | undefined;

/** Stands the paper of the next job up, or lays it down again as paperForm.css has it. */
export function standPaper(way: "upright" | "lying"): void {
	if (!upright) {
		upright = new CSSStyleSheet();
		upright.replaceSync("@page { size: portrait; }");
	}
	const others = [...document.adoptedStyleSheets].filter((sheet) => sheet !== upright);
	document.adoptedStyleSheets = way === "upright" ? [...others, upright] : others;
}
