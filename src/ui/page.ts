import type { Place } from "../core/problem.ts";
import type { State, Store } from "./state/store.ts";

/** What a page on the screen needs from the program around it. */
export interface Surroundings {
	readonly store: Store;
	goTo(place: Place): void;
	tell(messages: readonly string[]): void;
}

/** Something on the screen that is mounted once and painted at every change. */
export interface View {
	readonly file: string;
	paint(state: State): void;
	show(place: Place): void;
	destroy(): void;
}

/** A page that is made of several sheets, or of none. */
export interface OwnPage {
	readonly title: string;
	mount(place: HTMLElement, around: Surroundings): View;
}

/** A part of a sheet's page that a person works with: made once, painted at every change, so that nothing begun in it is lost. */
export interface SheetPart {
	readonly element: HTMLElement;
	paint(state: State): void;
}

/** What stands over a sheet's grid: its picture, with the sentence that says what it shows. */
export type OverGrid = (state: State, room: number) => HTMLElement | undefined;

/** Something made for paper: what its button says, and its pages. */
export interface PrintOut {
	readonly name: string;
	/** Each element is one or more pages; CSS breaks between them. */
	pages(state: State): readonly HTMLElement[];
}
