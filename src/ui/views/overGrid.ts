import type { State } from "../book/store.ts";
import { coverView } from "./coverView.ts";

/** What stands over a sheet's grid: its picture, with the sentence that says what it shows. */
export type OverGrid = (state: State, room: number) => HTMLElement | undefined;

/** By file; a sheet without an entry has only its grid. */
export const overGrid: Readonly<Record<string, OverGrid>> = {
	"kit-cover.csv": coverView,
};
