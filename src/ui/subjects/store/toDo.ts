/** One thing to do: with what, how much, by when. */
export interface ToDo {
	readonly item: string;
	readonly amount: string;
	readonly by: string;
	readonly more: string;
}

/** Things of one kind, under the word that says how pressing they are. */
export interface ToDoList {
	readonly urgent?: boolean;
	readonly word: string;
	readonly title: string;
	readonly lines: readonly ToDo[];
}
