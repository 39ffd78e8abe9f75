import { say } from "../../core/say.ts";

/**
 * Takes every file dropped on the page for itself, before the page around sees it.
 *
 * @returns what gives the drops back to the page
 */
export function catchDrops(dropped: (files: readonly File[]) => void): () => void {
	const taken = new AbortController();
	const over = (on: boolean) => {
		document.body.dataset.drop = say`Drop the units' order files here`;
		document.body.classList.toggle("dropping-orders", on);
	};
	const on = (type: "dragover" | "dragleave" | "drop", act: (event: DragEvent) => void) =>
		document.addEventListener(
			type,
			(event) => {
				if (!event.dataTransfer?.types.includes("Files")) return;
				event.preventDefault();
				event.stopPropagation();
				act(event);
			},
			{ capture: true, signal: taken.signal },
		);
	on("dragover", () => over(true));
	on("dragleave", () => over(false));
	on("drop", (event) => {
		over(false);
		dropped([...(event.dataTransfer?.files ?? [])]);
	});
	return () => {
		over(false);
		taken.abort();
	};
}
