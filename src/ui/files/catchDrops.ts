import { say } from "../../core/say.ts";
import { droppedFiles, type GivenFile } from "./givenFile.ts";

/**
 * Takes every file and folder dropped on the page for itself, before the page around sees it.
 *
 * @returns what gives the drops back to the page
 */
export function catchDrops(dropped: (files: Promise<readonly GivenFile[]>) => void): () => void {
	const taken = new AbortController();
	const over = (on: boolean) => {
		document.body.dataset.drop = say`Drop the units' workbooks or orders here`;
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
		dropped(droppedFiles(event.dataTransfer));
	});
	return () => {
		over(false);
		taken.abort();
	};
}
